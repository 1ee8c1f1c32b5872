import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  type Answer,
  type Answers,
  decide,
  leanDegrees,
  shellShare,
  worthTelling,
} from '@/lib/domain/safety/ours-or-the-arborists'
import { type ReferCode, referCodes, referRules } from '@/lib/domain/safety/refer-rules'

const house = { limbCm: 10, feetCm: 183, leanDeg: 15 }
const rules = referRules({ ...house, lineKv: 12.47 })
const cmPerInch = 2.54
const metresPerFoot = 0.3048

/** Everything looked for, and nothing there. */
const nothing: Answers = Object.fromEntries(referCodes.map((code) => [code, 'no']))

function codesOf(answers: Answers, by = rules): ReferCode[] {
  return decide({ ...nothing, ...answers }, by).reasons.map(({ code }) => code)
}

test('looked for everything, found nothing: ours', () => {
  expect(decide(nothing, rules)).toEqual({ outcome: 'ours', reasons: [] })
})

test.each(referCodes)('%s alone is enough', (code) => {
  expect(codesOf({ [code]: 'yes' })).toEqual([code])
})

test.each(referCodes)('%s that nobody looked for is the arborist’s, and says so', (code) => {
  const { [code]: _, ...rest } = nothing

  const { outcome, reasons } = decide(rest, rules)

  expect(outcome).toBe('refer')
  expect(reasons).toMatchObject([{ code, seen: false, value: null }])
})

test('without rules nobody has looked: the arborist’s', () => {
  expect(decide(nothing, []).outcome).toBe('refer')
})

describe('measures', () => {
  test.each([
    // Common practice, 3 to 4 inches: 3.9 in are ours at a house rule of 10 cm, 4.1 in are not.
    ['limb_thick', 3.9 * cmPerInch, []],
    ['limb_thick', 4.1 * cmPerInch, ['limb_thick']],
    ['limb_thick', 10, []],
    // Common practice: feet no higher than 6 ft.
    ['too_high', 183, []],
    ['too_high', 184, ['too_high']],
    // House rule, in no public guide: 15 degrees. Three feet aside in eight are 20.556.
    ['leaning_far', leanDegrees(3, 8), ['leaning_far']],
    ['leaning_far', leanDegrees(2, 8), []],
    // Second hand: over a third of the girth.
    ['canker_wide', 1 / 3, []],
    ['canker_wide', 0.34, ['canker_wide']],
    // 29 CFR 1910.269(x): 10 ft from 12.47 kV; a limb tip at 9.9 ft is nearer.
    ['line_near', 9.9 * metresPerFoot, ['line_near']],
    ['line_near', 11 * metresPerFoot, []],
  ] as const)('%s of %f', (code, value, codes) => {
    expect(codesOf({ [code]: value })).toEqual(codes)
  })

  test('the lean is reckoned from an offset', () => {
    expect(leanDegrees(3, 8)).toBeCloseTo(20.556, 3)
    expect(leanDegrees(2, 8)).toBeCloseTo(14.036, 3)
  })

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('%f measures nothing', (value) => {
    expect(decide({ ...nothing, limb_thick: value }, rules).reasons).toMatchObject([
      { code: 'limb_thick', seen: false },
    ])
  })

  test('a distance to a line of unknown voltage is never enough', () => {
    const unknown = referRules({ ...house, lineKv: null })

    expect(decide({ ...nothing, line_near: 80 }, unknown).reasons).toEqual([
      { code: 'line_near', seen: false, value: 80, limit: null },
    ])
    expect(codesOf({}, unknown)).toEqual([])
  })
})

/** t/R 0.30 (Mattheck) and 1 in of sound wood per 6 in (USDA Forest Service, Minnesota DNR), both from memory. */
describe('of a hollow trunk the stricter of two rules counts', () => {
  test.each([
    [12, 2, null],
    [12, 1.8, 1 / 3],
    [12, 1.5, 1 / 3],
    [10, 1.5, 1 / 3],
  ])('%f in through, %f in of sound wood', (trunk, sound, limit) => {
    const { reasons } = decide({ ...nothing, shell_thin: shellShare(trunk, sound) }, rules)

    expect(reasons.map((reason) => reason.limit)).toEqual(limit === null ? [] : [limit])
  })
})

describe('whatever is answered', () => {
  const answer: fc.Arbitrary<Answer> = fc.oneof(
    fc.constantFrom<Answer>('yes', 'no', 'not_known'),
    fc.double({ min: 0, max: 300, noNaN: true })
  )
  const answers = fc.dictionary(fc.constantFrom(...referCodes), answer) as fc.Arbitrary<Answers>

  test('one more thing seen or not known never turns the arborist’s into ours', () => {
    fc.assert(
      fc.property(
        answers,
        fc.constantFrom(...referCodes),
        fc.constantFrom<Answer>('yes', 'not_known'),
        (told, code, worse) => {
          const after = decide({ ...told, [code]: worse }, rules)
          expect(after.outcome).toBe('refer')
          expect(after.reasons.map((reason) => reason.code)).toContain(code)
        }
      ),
      { numRuns: 200 }
    )
  })

  test('it is ours only when every rule has an answer that clears it', () => {
    fc.assert(
      fc.property(answers, (told) => {
        const each = rules.every((rule) => decide(told, [rule]).outcome === 'ours')
        expect(decide(told, rules).outcome).toBe(each ? 'ours' : 'refer')
      }),
      { numRuns: 200 }
    )
  })
})

test('the arborist is told what was seen; what nobody knows only where nothing was', () => {
  const both = decide({ ...nothing, crack: 'yes', nest: 'not_known' }, rules)
  const unknown = decide({ ...nothing, nest: 'not_known' }, rules)

  expect(worthTelling(both).map(({ code }) => code)).toEqual(['crack'])
  expect(worthTelling(unknown).map(({ code }) => code)).toEqual(['nest'])
})
