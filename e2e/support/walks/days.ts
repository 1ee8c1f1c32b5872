/** What brings an orchard's day so far, for several walks. */

import { randomUUID } from 'node:crypto'

import type { Orchard, PersonName } from '../orchard'

/** Version 2: two topics stay, two come. */
export async function changeBriefing(
  orchard: Orchard,
  change: 'before_next_tree' | 'come_down'
): Promise<void> {
  const { id } = await orchard.openShift()
  const own = { code: 'own_1', en: 'Ordwin: Varnholt 3', es: 'Ordwin: Varnholt 3' }
  const topics = [{ code: 'stop_signal' }, { code: 'tools' }, own, { code: 'nests' }]
  await orchard.must('Lee', 'write_briefing', { shift: id, topics, change })
}

export async function planNext(orchard: Orchard): Promise<void> {
  const { roundId, date, startsAt, endsAt } = await orchard.openShift()
  const hours = { date, startsAt, endsAt, signal: 'whistle' } as const
  await orchard.must('Lee', 'schedule_shift', { round: roundId, ...hours })
}

export async function finish(orchard: Orchard, who: PersonName, tree: number): Promise<void> {
  const claim = randomUUID()
  await orchard.must(who, 'claim_tree', { tree }, claim)
  await orchard.must(who, 'finish_tree', { tree, claim })
}

export const hazard = { kind: 'arborist', sign: 'hanging_limb', severity: 'high' } as const
export const [tag2, tag4] = ['A 1·2', 'A 1·4']

/** A hazard with somebody inside its keep-out, and a suspected disease; gives the hazard's flag. */
export async function flagBoth(orchard: Orchard): Promise<string> {
  const flag = randomUUID()
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  await orchard.must('Bo', 'flag_tree', { tree: 2, ...hazard, keepOutM: 8, note: '2' }, flag)
  await orchard.must('Bo', 'flag_tree', { tree: 4, kind: 'disease', sign: 'gum', severity: 'low' })
  return flag
}
