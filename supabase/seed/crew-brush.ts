/** A simulated person who carries away what others cut. */

import type { Held, Sim } from './crew-person'

export async function haulNext({ phone, random, land }: Sim): Promise<string> {
  const lying = random.pick(treesWithWood(phone.state()))
  const tree = lying === null ? undefined : land.rules.trees.get(lying)
  if (!tree) return 'finds no brush'
  const { block, row } = tree
  const answer = await phone.ask('take_brush', { block, row })
  return answer && 'n' in answer ? `hauls row ${row}` : `may not haul row ${row}`
}

export async function atBrush(sim: Sim, { id, row }: Held): Promise<string> {
  if (sim.random.percent(50)) return 'carries brush'
  const { phone, land, putDown } = sim
  const gone = treesWithWood(phone.state()).filter((no) => {
    const tree = land.rules.trees.get(no)
    return tree?.block === row?.block && tree?.row === row?.row
  })
  putDown.add(id)
  await phone.keep('finish_brush', { claim: id, trees: gone })
  return `hauled the wood of ${gone.length} trees`
}

function treesWithWood({ work, hauled }: ReturnType<Sim['phone']['state']>): number[] {
  return Object.keys(work)
    .map(Number)
    .filter((tree) => work[tree]?.state !== 'left_out' && !hauled[tree])
}
