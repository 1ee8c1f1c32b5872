/** What the manager does meanwhile: deals, marks, comes when called, looks over, and ends claims of people nobody hears of. */

import { isRefused } from '@/lib/events/answer'

import { answerCall } from './crew-calls'
import type { Sim } from './crew-person'
import { treeToTake } from './trees-to-take'

type Leading = (
  manager: Sim['manager'],
  sims: readonly Sim[],
  random: Sim['random']
) => Promise<string>

export const lead: Leading = async (manager, sims, random) => {
  await manager.hear()
  const dice = random.share() * 100
  if (dice < 45) return deal(manager, sims, random)
  if (dice < 65) return mark(manager, sims, random)
  if (dice < 75) return answerCall(manager)
  if (dice < 88) return lookOver(manager, sims, random)
  return endSilentClaim(manager, sims, random)
}

const deal: Leading = async (manager, sims, random) => {
  const sim = random.pick(sims)
  if (!sim) return 'waits'
  const { personId } = sim.phone.seat
  const tree = treeToTake(sim.land, manager.state(), { personId, from: sim.at })
  if (!tree) return 'has nothing to deal'
  await manager.ask('deal_trees', { trees: [tree.no], to: [personId] })
  return `dealt tree ${tree.no} to ${sim.phone.name}`
}

/** For people who do not prune alone yet. */
const mark: Leading = async (manager, sims, random) => {
  const state = manager.state()
  const learners = sims.filter(
    ({ phone }) => state.skills[phone.seat.personId]?.prunes_alone === undefined
  )
  const sim = random.pick(learners) ?? random.pick(sims)
  const species = Object.values(state.rounds).flatMap((round) => round.species)
  const open = (sim?.land.trees ?? []).filter(
    (tree) =>
      tree.life === 'standing' &&
      species.includes(tree.species) &&
      !tree.asksSaw &&
      !state.marked[tree.no] &&
      !state.work[tree.no]
  )
  const tree = random.pick(open)
  if (!tree) return 'has nothing to mark'
  await manager.ask('mark_big_cuts', { tree: tree.no })
  return `marked tree ${tree.no}`
}

const lookOver: Leading = async (manager, _, random) => {
  const { work, lookedOver } = manager.state()
  const open = Object.keys(work).filter(
    (tree) => work[Number(tree)]?.state === 'done' && !lookedOver[Number(tree)]
  )
  const tree = Number(random.pick(open) ?? 0)
  if (tree === 0) return 'has nothing to look over'
  const stubs = { result: 'reopened', reason: 'stubs_left' } as const
  const found = random.percent(25) ? stubs : ({ result: 'passed' } as const)
  await manager.ask('look_over', { tree, ...found })
  return `looked over tree ${tree}: ${found.result}`
}

/** Somebody has no signal; they are met in the row, and somebody else may have the tree. */
const endSilentClaim: Leading = async (manager, sims, random) => {
  const silent = sims.filter(({ phone }) => !phone.hasSignal())
  const sim = random.pick(silent)
  const held = Object.entries(manager.state().claims).find(
    ([, { people }]) => people[sim?.phone.seat.personId ?? ''] === 'holder'
  )
  if (!sim || !held) return 'walks along the rows'
  const [claim, { tree }] = held
  const answer = await manager.ask('end_claim', { claim, howReached: 'Met in the row.' })
  const done = answer !== null && !isRefused(answer)
  return `${done ? 'ended' : 'could not end'} the claim of ${sim.phone.name} on tree ${tree}`
}
