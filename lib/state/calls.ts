/** Calls for help: mine, and those that ask this lead to come. */

import type { Call, CallKind } from '@/lib/events/state'

import type { View } from './view'

export type OpenCall = Call & { id: string }

/** So long only leads who are here are asked; then everybody who leads. House rule of Rowcall, no source. */
export const askEverybodyAfterMs = 60_000

/** What I called for and nobody has ended, the gravest and oldest first. */
export function myCalls({ state, me }: Pick<View, 'state' | 'me'>): OpenCall[] {
  return openCalls({ state })
    .filter(({ calledBy }) => calledBy === me?.personId)
    .toSorted((a, b) => rank[a.kind] - rank[b.kind])
}

/** Whoever is looked for, by others than me: all the crew is told. */
export function lostPersonCalls({ state, me }: Pick<View, 'state' | 'me'>): OpenCall[] {
  return openCalls({ state }).filter(
    ({ kind, calledBy }) => kind === 'lost_person' && calledBy !== me?.personId
  )
}

/**
 * What asks this lead, the gravest first: what nobody has answered, what they answered themselves, and
 * whatever is grave until it is ended. Empty for who does not lead.
 */
export function callsToMe({ state, me }: Pick<View, 'state' | 'me'>, now: Date): OpenCall[] {
  if (!state || !me || !leads(state.me.role)) return []
  return openCalls({ state })
    .filter((call) => call.calledBy !== me.personId && isAsked({ state, me }, call, now))
    .filter(({ kind, answeredBy }) => !answeredBy || answeredBy === me.personId || isGrave(kind))
    .toSorted(
      (a, b) =>
        rank[a.kind] - rank[b.kind] || Number(a.answeredBy !== null) - Number(b.answeredBy !== null)
    )
}

/** Leads who are here, whom a call asks first. */
export function leadsHere({ state }: Pick<View, 'state'>): string[] {
  return Object.keys(state?.attendance ?? {}).filter((id) => leads(state?.people[id]?.role))
}

export function ageMs({ calledAt }: Pick<Call, 'calledAt'>, now: Date): number {
  return Math.max(0, now.getTime() - Date.parse(calledAt))
}

export function isGrave(kind: CallKind): boolean {
  return kind === 'injury' || kind === 'lost_person'
}

const rank: Record<CallKind, number> = { injury: 0, lost_person: 1, tool: 2, question: 2 }

/** At once where nobody else could come: the only lead here may be the one who calls. */
function isAsked({ state, me }: Pick<View, 'state' | 'me'>, call: OpenCall, now: Date): boolean {
  const here = leadsHere({ state }).filter((id) => id !== call.calledBy)
  return (
    here.length === 0 ||
    here.includes(me?.personId ?? '') ||
    ageMs(call, now) >= askEverybodyAfterMs
  )
}

function leads(role: string | undefined): boolean {
  return role === 'lead' || role === 'manager'
}

function openCalls({ state }: Pick<View, 'state'>): OpenCall[] {
  return Object.entries(state?.calls ?? {})
    .map(([id, call]) => ({ ...call, id }))
    .toSorted((a, b) => (a.calledAt < b.calledAt ? -1 : 1))
}
