/** A simulated person between two trees: the next one, a mistake, a break, a hand for somebody. */

import { haulNext } from './crew-brush'
import { callForHelp } from './crew-calls'
import type { Sim } from './crew-person'
import { treeToTake } from './trees-to-take'

export async function betweenTrees(sim: Sim): Promise<string> {
  const { phone, random } = sim
  const dice = random.share() * 100
  if (dice < 8) return claimHeld(sim)
  if (dice < 13) {
    await phone.keep('start_break', {})
    return 'takes a break'
  }
  if (dice < 19) return join(sim)
  if (dice < 24 && sim.at !== null) {
    const answer = await phone.ask('undo_tree', { tree: sim.at })
    if (answer && 'n' in answer) sim.putDown.clear()
    return `takes back what was said of tree ${sim.at}`
  }
  if (dice < 28) return callForHelp(sim)
  if (dice < 40) return haulNext(sim)
  return claimNext(sim)
}

async function claimNext(sim: Sim): Promise<string> {
  const { phone, random, land } = sim
  const { personId } = phone.seat
  const buddy = random.pick(sim.others.filter(({ seat }) => isHere(sim, seat.personId)))
  const wish = random.percent(30) && buddy ? { buddy: buddy.seat.personId } : {}
  const tree = treeToTake(land, phone.state(), { personId, from: sim.at, wish })
  if (!tree) return 'finds no tree'
  const answers = random.percent(8)
    ? await Promise.all([claim(tree.no), claim(tree.no)])
    : [await claim(tree.no)]
  if (!answers.some((answer) => answer && 'n' in answer)) return `did not get tree ${tree.no}`
  sim.at = tree.no
  return `claimed tree ${tree.no}`

  function claim(no: number) {
    return phone.ask('claim_tree', { tree: no, ...wish })
  }
}

/** Somebody else's tree, since one plate looks like the other. */
async function claimHeld({ phone, random }: Sim): Promise<string> {
  const held = Object.values(phone.state().claims).flatMap(({ tree }) => tree ?? [])
  const tree = random.pick(held)
  if (tree === null) return 'looks around'
  await phone.ask('claim_tree', { tree })
  return `asked for tree ${tree}, which somebody holds`
}

async function join({ phone, random }: Sim): Promise<string> {
  const claim = random.pick(Object.entries(phone.state().claims))
  if (!claim) return 'looks around'
  const [id, { tree }] = claim
  const answer = await phone.ask('join_tree', { claim: id, part: 'helper' })
  return answer && 'n' in answer ? `helps at tree ${tree}` : `may not help at tree ${tree}`
}

function isHere({ phone }: Sim, personId: string): boolean {
  return phone.state().attendance[personId]?.state === 'here'
}
