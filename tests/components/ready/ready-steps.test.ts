import { describe, expect, test } from 'vitest'

import {
  type Readiness,
  readySteps,
  stepNow,
  waitsForBriefing,
} from '../../../components/ready/ready-steps'

const open: Readiness = {
  missing: [],
  shift: 'open',
  wasBriefed: false,
  isMinor: false,
  guardianIsHere: false,
  consented: true,
}

const lacking = (...codes: string[]) => codes.map((code) => ({ code }))
const standing = (facts: Readiness) =>
  Object.fromEntries(readySteps(facts).map(({ name, state }) => [name, state]))

test('somebody who lacks nothing has only steps that are done', () => {
  expect(readySteps(open).every(({ state }) => state === 'done')).toBe(true)
  expect(stepNow(readySteps(open))).toBeNull()
})

test('a newcomer does everything but be briefed, which somebody else does', () => {
  const missing = lacking(
    'not_arrived',
    'consent_missing',
    'briefing_not_given',
    'briefing_not_signed',
    'equipment_not_checked',
    'no_tool_in_hand'
  )

  expect(standing({ ...open, missing })).toEqual({
    crew: 'done',
    arrive: 'mine',
    consent: 'mine',
    given: 'wait',
    briefing: 'mine',
    equipment: 'mine',
    tools: 'mine',
  })
  expect(stepNow(readySteps({ ...open, missing }))).toBe('arrive')
})

test('after “come down now” who was briefed signs, and waits only if a lead signed for them', () => {
  const changed = lacking('briefing_not_given', 'briefing_not_signed')
  const toSign = standing({ ...open, missing: changed, wasBriefed: true })
  expect([toSign.given, toSign.briefing]).toEqual(['done', 'mine'])

  const toBeTold = lacking('briefing_not_given')
  expect(standing({ ...open, missing: toBeTold, wasBriefed: true }).given).toBe('wait')
})

test.each(['no_tool_in_hand', 'tool_failed', 'tool_not_clean'])(
  '%s is a matter of tools',
  (code) => {
    expect(standing({ ...open, missing: lacking(code) }).tools).toBe('mine')
  }
)

describe('a minor', () => {
  const missing = lacking('consent_missing', 'adult_missing')

  test('waits for the guardian to agree, and for an adult to be there', () => {
    const steps = standing({ ...open, missing, isMinor: true })
    expect([steps.consent, steps.adult]).toEqual(['wait', 'wait'])
  })

  test('goes to the consent where the guardian uses this device too', () => {
    expect(standing({ ...open, missing, isMinor: true, guardianIsHere: true }).consent).toBe('mine')
  })
})

describe('outside a shift', () => {
  const missing = lacking('shift_not_open')

  test('one can consent already, and waits for the shift', () => {
    const facts: Readiness = { ...open, missing, shift: 'planned', consented: false }
    expect(standing(facts)).toEqual({ crew: 'done', consent: 'mine', shift: 'wait' })
  })

  test('there is nothing to consent to without a round', () => {
    const facts: Readiness = { ...open, missing, shift: 'none', consented: null }
    expect(standing(facts)).toEqual({ crew: 'done', no_shift: 'wait' })
  })
})

test('whoever only has not been briefed is sent to listen, not told to wait', () => {
  const onlyBriefing = readySteps({ ...open, missing: lacking('briefing_not_given') })
  const alsoTools = readySteps({
    ...open,
    missing: lacking('briefing_not_given', 'no_tool_in_hand'),
  })

  expect(waitsForBriefing(onlyBriefing)).toBe(true)
  expect(waitsForBriefing(alsoTools)).toBe(false)
  expect(waitsForBriefing(readySteps({ ...open, missing: [] }))).toBe(false)
})

test('a stop in force waits for a lead; one that is over wants my answer first', () => {
  expect(standing({ ...open, missing: lacking('stopped') }).stopped).toBe('wait')
  expect(stepNow(readySteps({ ...open, missing: lacking('stop_not_answered') }))).toBe(
    'stop_answer'
  )
})
