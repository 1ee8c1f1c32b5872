/** What can be said of a day. Each is one sentence, and leads to where one acts. */

import type { Call, Instant } from '@/lib/events/state'

export type DayFact =
  | { code: 'stopped'; block: number | null; by: string; notAnswered: string[] }
  | { code: 'called'; call: Call }
  | { code: 'still_inside'; people: string[] }
  | { code: 'hazard'; tree: number; sign: string; by: string; at: Instant }
  | { code: 'alone_with_ladder'; person: string; tree: number }
  | { code: 'waits_for_lead'; person: string; tree: number }
  | { code: 'not_heard'; person: string; minutes: number; tree: number | null }
  | { code: 'many_not_heard'; people: string[] }
  | { code: 'not_let_in'; people: string[] }
  | { code: 'not_answered'; people: string[] }
  | { code: 'not_briefed'; people: string[] }
  | { code: 'without_equipment'; people: string[] }
  | { code: 'without_tool'; people: string[] }
  | { code: 'lacks_other'; people: string[] }
  | { code: 'long_at_tree'; person: string; minutes: number; tree: number | null }
  | { code: 'disease_to_judge'; trees: number[] }
  | { code: 'without_tree'; people: string[] }
  | { code: 'for_arborist'; trees: number[] }
  | { code: 'half_done'; trees: number[] }
  | { code: 'to_look_over'; trees: number[] }
  | { code: 'on_brush'; people: string[] }

export type DayClock = {
  now: Date
  /** Whose phone was heard when; without a phone nobody is missed by it. Null: not asked yet. */
  heardAt: ReadonlyMap<string, Instant> | null
  /** After how long without word a lead should look: the house rule. */
  quietMinutes: number
}

type OfPeople = Extract<DayFact, { people: string[] }>['code']
type OfTrees = Extract<DayFact, { trees: number[] }>['code']

export function some(code: OfPeople, people: string[]): DayFact[]
export function some(code: OfTrees, trees: number[]): DayFact[]
export function some(code: OfPeople | OfTrees, list: string[] | number[]): DayFact[] {
  if (list.length === 0) return []
  // The overloads say which list goes with which code.
  return [{ code, [typeof list[0] === 'string' ? 'people' : 'trees']: list } as DayFact]
}
