'use client'

import { nameOf, toolsInHand, useNow, useSelect } from '@/lib/hooks'
import { theLead } from '../day/leads'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import type { ReadyStep } from './ready-steps'
import { nextShift } from './use-ready'

type StepWords = { title: string; note: string }

/** What a step is called, and what is to be known about it. */
export function useStepWords({ name, state }: ReadyStep): StepWords {
  const { ready } = useStartWords()
  const format = useFormat()
  const me = useSelect((view) => view.me)
  const lead = useSelect(theLead)
  const shift = useSelect(nextShift)
  const here = useSelect((view) => view.state?.attendance[me?.personId ?? ''] ?? null)
  const briefed = useSelect((view) => view.state?.briefed[me?.personId ?? ''] ?? null)
  const minor = useSelect((view) => view.state?.minors[me?.personId ?? ''] ?? null)
  const guardian = useSelect((view) => (minor?.guardianId ? nameOf(view, minor.guardianId) : null))
  const tools = useSelect(toolsInHand)
  const now = useNow()
  const clock = (at: string | undefined) => (at === undefined ? '' : format.clock(new Date(at)))
  const isDone = state === 'done'

  switch (name) {
    case 'crew':
      return isDone
        ? { title: ready.inCrew, note: ready.inCrewAs(me?.personName ?? '') }
        : { title: ready.notAdmitted, note: ready.notAdmittedNote }
    case 'shift':
      return { title: ready.shiftNotOpen, note: ready.shiftOpensAt(lead, clock(shift?.startsAt)) }
    case 'no_shift':
      return { title: ready.noShift, note: ready.noShiftNote }
    case 'stopped':
      return { title: ready.stopped, note: ready.stoppedNote }
    case 'stop_answer':
      return { title: ready.stopAnswer, note: ready.stopAnswerNote }
    case 'arrive':
      return {
        title: ready.arrive,
        note: isDone ? ready.arrived(clock(here?.since)) : ready.arriveNote,
      }
    case 'on_break':
      return { title: ready.onBreak, note: ready.onBreakNote(clock(here?.since)) }
    case 'consent':
      return { title: ready.consent, note: consentNote() }
    case 'adult':
      return { title: ready.adult(guardian), note: ready.adultNote }
    case 'given':
      return { title: ready.given(lead), note: isDone ? ready.givenNote : givenNote() }
    case 'briefing':
      return { title: ready.briefing, note: briefingNote() }
    case 'equipment':
      return { title: ready.equipment, note: isDone ? ready.equipmentDone : ready.equipmentNote }
    case 'tools':
      return { title: ready.tools, note: toolsNote() }
  }

  function consentNote(): string {
    if (isDone) return ready.consentDone
    return minor ? ready.adultConsents : ready.consentNote
  }

  /** Before its hour one goes there; after it one waits for the lead to put it down. */
  function givenNote(): string {
    const isBefore = shift !== null && now !== null && new Date(shift.startsAt) > now
    return isBefore ? ready.givenAt(clock(shift.startsAt)) : ready.givenWait(lead)
  }

  function briefingNote(): string {
    if (isDone) return ready.briefingDone(briefed?.signedVersion ?? 0)
    return (briefed?.signedVersion ?? 0) > 0 ? ready.briefingAgain : ready.briefingNote
  }

  function toolsNote(): string {
    if (isDone) return ready.toolsDone(format.list(tools.map(({ label }) => label)))
    if (tools.some(({ fit }) => !fit)) return ready.toolsFailed
    return tools.some(({ clean }) => !clean) ? ready.toolsNotClean : ready.toolsNote
  }
}
