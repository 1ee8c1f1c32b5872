/** A simulated person without signal: what is done is kept, and a tree dealt before may be begun. */

import { atBrush } from './crew-brush'
import { holding, type Sim } from './crew-person'

export async function lookForSignal(sim: Sim): Promise<string> {
  const { phone, random } = sim
  sim.noSignalFor -= 1
  if (sim.noSignalFor <= 0) {
    const kept = phone.unsent()
    await phone.findSignal()
    return kept > 0 ? `has signal again and sent ${kept}` : 'has signal again'
  }
  const held = holding(sim)
  if (held?.row) return atBrush(sim, held)
  if (held && random.percent(60)) return putDown(sim, held.id, held.tree ?? 0)
  if (!held && random.percent(50)) return finishDealt(sim)
  return 'has no signal'
}

async function putDown(sim: Sim, claim: string, tree: number): Promise<string> {
  const { phone, random } = sim
  sim.putDown.add(claim)
  const at = new Date().toISOString()
  const work = { claim, tree, at, begunAt: null, elapsedS: null }
  if (random.percent(75)) {
    await phone.keep('finish_tree', work)
    return `finished tree ${tree} without signal`
  }
  await phone.keep('release_tree', { ...work, share: 50 })
  return `left tree ${tree} half done without signal`
}

async function finishDealt({ phone }: Sim): Promise<string> {
  const { personId } = phone.seat
  const state = phone.state()
  const dealt = Object.entries(state.deals).find(([, people]) => people.includes(personId))
  if (!dealt || state.attendance[personId]?.state !== 'here') return 'has no signal'
  const tree = Number(dealt[0])
  const at = new Date().toISOString()
  await phone.keep('finish_tree', { claim: null, tree, begunAt: at, at, elapsedS: null })
  return `finished tree ${tree}, dealt before the signal went`
}
