/**
 * What stands before the next tree, as steps of one row: what is done, what is mine to do, and what waits
 * for somebody else. The referee's own codes say what is missing; nothing here decides anything.
 */

import type { Refusal } from '@/lib/events/answer'

export type StepName =
  | 'crew'
  | 'shift'
  | 'no_shift'
  | 'stopped'
  | 'stop_answer'
  | 'arrive'
  | 'on_break'
  | 'consent'
  | 'adult'
  | 'given'
  | 'briefing'
  | 'equipment'
  | 'tools'

/** `wait` is for somebody else to do. */
export type ReadyStep = { name: StepName; state: 'done' | 'mine' | 'wait' }

export type Readiness = {
  /** As the referee says it. */
  missing: readonly Refusal[]
  shift: 'open' | 'planned' | 'none'
  /** Somebody briefed them today, maybe before it changed. */
  wasBriefed: boolean
  /** For a minor somebody else consents. */
  isMinor: boolean
  /** The guardian of a minor uses this device too. */
  guardianIsHere: boolean
  /** Known before a shift opens, when the referee does not yet say so; null: no round to consent to. */
  consented: boolean | null
}

export function readySteps(facts: Readiness): ReadyStep[] {
  const { missing, shift } = facts
  const lacks = (...codes: string[]) => missing.some(({ code }) => codes.includes(code))
  const crew: ReadyStep = { name: 'crew', state: lacks('not_admitted') ? 'wait' : 'done' }
  if (shift !== 'open') {
    return [
      crew,
      ...(facts.consented === null ? [] : consentSteps(facts, !facts.consented)),
      { name: shift === 'planned' ? 'shift' : 'no_shift', state: 'wait' },
    ]
  }
  const mine = (name: StepName, ...codes: string[]): ReadyStep => ({
    name,
    state: lacks(...codes) ? 'mine' : 'done',
  })
  return [
    crew,
    ...(lacks('stopped') ? [{ name: 'stopped', state: 'wait' } as const] : []),
    ...(lacks('stop_not_answered') ? [{ name: 'stop_answer', state: 'mine' } as const] : []),
    mine('arrive', 'not_arrived'),
    ...(lacks('on_break') ? [{ name: 'on_break', state: 'mine' } as const] : []),
    ...consentSteps(facts, lacks('consent_missing')),
    ...(lacks('adult_missing') ? [{ name: 'adult', state: 'wait' } as const] : []),
    {
      name: 'given',
      // Told of a change or signing it themselves: who was briefed once need not wait for the lead.
      state:
        lacks('briefing_not_given') && !(facts.wasBriefed && lacks('briefing_not_signed'))
          ? 'wait'
          : 'done',
    },
    mine('briefing', 'briefing_not_signed'),
    mine('equipment', 'equipment_not_checked'),
    mine('tools', 'no_tool_in_hand', 'tool_failed', 'tool_not_clean'),
  ]
}

function consentSteps({ isMinor, guardianIsHere }: Readiness, isMissing: boolean): ReadyStep[] {
  const state = !isMissing ? 'done' : isMinor && !guardianIsHere ? 'wait' : 'mine'
  return [{ name: 'consent', state }]
}

/** The first step that is mine to do. */
export function stepNow(steps: readonly ReadyStep[]): StepName | null {
  return steps.find(({ state }) => state === 'mine')?.name ?? null
}

/** All that is still open is to go there and listen. */
export function waitsForBriefing(steps: readonly ReadyStep[]): boolean {
  const open = steps.filter(({ state }) => state !== 'done')
  return open.length > 0 && open.every(({ name }) => name === 'given')
}
