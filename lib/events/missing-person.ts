/**
 * What a person lacks before any claim, for "before you start". The referee decides
 * (private.missing_of_person); this is never stricter, and says nothing about what it cannot know.
 */

import type { Refusal } from './answer'
import type { Ground } from './ground'
import { briefedOf, claimOf, isTold, knowsAbout, openShift } from './look-ups'
import type { Instant, Part, Shift, State } from './state'
import { weatherStops } from './weather'

export type WorkKind = 'prune' | 'brush' | 'other'

/** Without a time weather and darkness put nothing off, without the ground darkness does not. */
type PersonWish = { kind?: WorkKind; part?: Part; now?: Instant; ground?: Ground }

/** In the order in which one goes through it. */
export function missingOfPerson(
  state: State,
  personId: string,
  { kind = 'prune', part = 'holder', ...here }: PersonWish = {}
): Refusal[] {
  const shift = openShift(state)
  const person = state.people[personId]
  const missing: Refusal[] = []
  if (person?.role === 'visitor') missing.push({ code: 'visitors_do_not_prune' })
  if (person?.admitted === false) missing.push({ code: 'not_admitted' })
  if (!shift) return [...missing, { code: 'shift_not_open' }]

  const held = claimOf(state, personId)
  return [
    ...missing,
    ...missingAfterStop(state, personId),
    ...weatherStops(state, here),
    ...missingPresence(state, personId),
    ...missingConsent(state, personId, shift),
    ...missingBriefing(state, personId, shift),
    ...(state.equipped[personId] ? [] : [{ code: 'equipment_not_checked' }]),
    ...(part === 'learner' ? [] : missingTools(state, personId, kind)),
    ...(held ? [{ code: 'holds_another', detail: { tree: held.tree, row: held.row } }] : []),
  ]
}

function missingAfterStop(state: State, personId: string): Refusal[] {
  const stops = Object.entries(state.stops).toSorted(([, a], [, b]) =>
    a.calledAt < b.calledAt ? 1 : -1
  )
  const inForce = stops.findLast(([, stop]) => !stop.resumed && stop.block === null)
  if (inForce) return [{ code: 'stopped', detail: { stop: inForce[0] } }]

  const last = stops.find(([, stop]) => stop.resumed)
  const since = state.attendance[personId]?.since
  // Who came after that stop never heard it.
  const heardIt = last !== undefined && since !== undefined && since < last[1].calledAt
  return heardIt && last[1].answers[personId] !== 'resumed'
    ? [{ code: 'stop_not_answered', detail: { stop: last[0] } }]
    : []
}

function missingPresence(state: State, personId: string): Refusal[] {
  const there = state.attendance[personId]
  if (!there) return [{ code: 'not_arrived' }]
  return there.state === 'break' ? [{ code: 'on_break' }] : []
}

function missingConsent(state: State, personId: string, shift: Shift): Refusal[] {
  if (!knowsAbout(state, personId)) return []
  const missing: Refusal[] = []
  const season = state.rounds[shift.roundId]?.season
  const consented = state.consents[personId]
  if (season !== undefined && (consented === undefined || consented < season)) {
    missing.push({ code: 'consent_missing' })
  }
  const minor = state.minors[personId]
  if (minor && (minor.guardianId === null || !state.attendance[minor.guardianId])) {
    missing.push({ code: 'adult_missing', detail: { person: minor.guardianId } })
  }
  return missing
}

function missingBriefing(state: State, personId: string, shift: Shift): Refusal[] {
  const briefed = briefedOf(state, personId)
  const version = shift.briefingVersion
  return [
    ...(isTold(briefed, shift) ? [] : [{ code: 'briefing_not_given' }]),
    ...(version > 0 && briefed.signedVersion === version
      ? []
      : [{ code: 'briefing_not_signed', detail: { version } }]),
  ]
}

const cuts = ['pruner', 'lopper', 'saw', 'pole_pruner']

function missingTools(state: State, personId: string, kind: WorkKind): Refusal[] {
  const inHand = Object.entries(state.tools).filter(([, tool]) => tool.heldBy === personId)
  const lacksTool = kind === 'prune' && !inHand.some(([, tool]) => cuts.includes(tool.kind))
  return [
    ...(lacksTool ? [{ code: 'no_tool_in_hand' }] : []),
    ...inHand
      .filter(([, tool]) => !tool.fit)
      .map(([no]) => ({ code: 'tool_failed', detail: { tool: Number(no) } })),
    ...inHand
      .filter(([, tool]) => !tool.clean)
      .map(([no]) => ({ code: 'tool_not_clean', detail: { tool: Number(no) } })),
  ]
}
