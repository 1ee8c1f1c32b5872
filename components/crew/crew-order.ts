/** The crew as a lead wants to read it: who needs somebody first. */

import type { Instant } from '@/lib/events/state'
import type { Whereabouts } from '@/lib/hooks'

/** Longer than any usual tree takes. Common practice, no source; it ends nothing, it only asks a lead to look. */
export const longAtTreeMinutes = 45

/** A phone that was heard so long ago was heard in another shift: how long says nothing. */
export const longerThanAnyShift = 24 * 60

export type Need =
  | { kind: 'call' }
  | { kind: 'hazard'; tree: number }
  | { kind: 'quiet'; minutes: number }
  | { kind: 'long' }
  /** Alone at a tree that takes two. */
  | { kind: 'alone' }
  /** Under age, and the adult who answers for them is not here. */
  | { kind: 'minor_alone' }

/** Minutes since the phone was heard, or that there is none. */
export type LastHeard = number | 'no_phone'

export type CrewLine = Whereabouts & {
  need: Need | null
  /** Null: not asked yet. */
  heard: LastHeard | null
  /** Trees kept for them that are not begun. */
  toGo: number
  minutes: number
  isReady: boolean
}

export type CrewFacts = {
  where: readonly Whereabouts[]
  now: Date
  /** Whose phone was heard when; without a phone nobody is missed by it. Null: not asked yet. */
  heardAt: ReadonlyMap<string, Instant> | null
  quietMinutes: number
  /** Who calls for help. */
  isCalling: (personId: string) => boolean
  /** Who raised an arborist flag that is still open, and at which tree. */
  hazardBy: ReadonlyMap<string, number>
  lackOf: (personId: string) => 'alone' | 'minor_alone' | null
  toGo: (personId: string) => number
  isReady: (personId: string) => boolean
  nameOf: (personId: string) => string
}

/** Calls for help, who is alone at a tree that takes two, hazards, people not heard from, long at one tree; then the rest. */
export function crewInOrder(facts: CrewFacts): CrewLine[] {
  return facts.where
    .map((one) => ({
      ...one,
      need: needOf(one, facts),
      heard: lastHeard(one.personId, facts),
      toGo: facts.toGo(one.personId),
      minutes: minutesSince(one.since, facts.now),
      isReady: facts.isReady(one.personId),
    }))
    .toSorted(
      (a, b) =>
        rankOf(a) - rankOf(b) || facts.nameOf(a.personId).localeCompare(facts.nameOf(b.personId))
    )
}

export type CrewCounts = { atTree: number; free: number; onBreak: number }

export function countCrew(where: readonly Whereabouts[]): CrewCounts {
  const atTree = where.filter(isAtWork).length
  const onBreak = where.filter((one) => one.state === 'break' && !isAtWork(one)).length
  return { atTree, onBreak, free: where.length - atTree - onBreak }
}

export function minutesSince(at: Instant, now: Date): number {
  return Math.max(0, Math.floor((now.getTime() - Date.parse(at)) / 60_000))
}

export function isAtWork({ tree, row }: Whereabouts): boolean {
  return tree !== null || row !== null
}

function needOf(one: Whereabouts, facts: CrewFacts): Need | null {
  if (facts.isCalling(one.personId)) return { kind: 'call' }
  const lack = facts.lackOf(one.personId)
  if (lack !== null) return { kind: lack }
  const hazard = facts.hazardBy.get(one.personId)
  // Flagging ends the claim: until they have another tree they stand there and wait for a lead.
  if (hazard !== undefined && !isAtWork(one)) return { kind: 'hazard', tree: hazard }
  const heard = lastHeard(one.personId, facts)
  const quiet = typeof heard === 'number' ? heard : 0
  if (quiet >= facts.quietMinutes) return { kind: 'quiet', minutes: quiet }
  // A row of brush takes as long as it takes.
  const isLong = one.tree !== null && minutesSince(one.since, facts.now) >= longAtTreeMinutes
  return isLong && one.state === 'here' ? { kind: 'long' } : null
}

function lastHeard(personId: string, { heardAt, now }: CrewFacts): LastHeard | null {
  if (heardAt === null) return null
  const at = heardAt.get(personId)
  return at === undefined ? 'no_phone' : minutesSince(at, now)
}

const needRank = { call: -1, alone: 0, minor_alone: 0, hazard: 1, quiet: 2, long: 3 }

function rankOf(line: CrewLine): number {
  if (line.need) return needRank[line.need.kind]
  if (line.state === 'break') return 6
  return isAtWork(line) ? 4 : 5
}
