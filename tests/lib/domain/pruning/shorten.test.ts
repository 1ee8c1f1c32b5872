import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { mayGo, tipShoot } from '@/lib/domain/pruning/last-years-wood'
import { shareOfBudsLost, shorten, usualBuds } from '@/lib/domain/pruning/shorten'

const shoot60 = { counts: usualBuds.middle, shootCm: 60, limbCm: 150 }
const counts = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 10, maxLength: 10 })
const share = fc.double({ min: 0, max: 1, noNaN: true })

// General gardening reference on apricots, second hand.
describe('an apricot shoot of 60 cm', () => {
  const apricot = { species: 'apricot', habit: 'both' } as const

  test('with its buds in the middle loses a third: 20 cm go, 40 stay', () => {
    const third = mayGo({ ...apricot, buds: 'middle' })?.most ?? 0

    expect(shorten(shoot60, third)).toMatchObject({
      takenCm: expect.closeTo(20, 9),
      lengthLeftCm: expect.closeTo(40, 9),
    })
  })

  test('with its buds near the base loses 30 to 40 cm', () => {
    const range = mayGo({ ...apricot, buds: 'base' })

    expect(range && range.least * 60).toBeCloseTo(30)
    expect(range && range.most * 60).toBeCloseTo(40)
  })

  test.each([10, 60, 200])('with its buds at the tip is not shortened, %s cm or not', () => {
    expect(mayGo({ ...apricot, buds: 'tip' })).toBeNull()
  })
})

// Heritage-orchard site, second hand: shorter than about 9 inches they are left alone, longer may be cut to a bud.
describe('a shoot of a tip bearer', () => {
  test.each([
    ['apple', 8, 'leave'],
    ['apple', 9, 'leave'],
    ['apple', 12, 'may_cut'],
    // The source speaks of apples alone.
    ['quince', 12, 'leave'],
  ] as const)('%s, %s in: %s', (species, inches, what) => {
    expect(tipShoot(species, inches * 2.54)).toBe(what)
  })

  test('never loses a share of its length, however long it is', () => {
    expect(mayGo({ species: 'apple', habit: 'shoot', buds: 'tip' })).toBeNull()
  })
})

describe('the buds that go', () => {
  test('of the outer third are few in the middle bearer and most in the tip bearer', () => {
    // (10/3 + 5 + 3 + 1) and (14/3 + 16 + 18 + 18) of 100, by hand.
    expect(shareOfBudsLost(usualBuds.middle, 1 / 3)).toBeCloseTo(0.12333, 5)
    expect(shareOfBudsLost(usualBuds.tip, 1 / 3)).toBeCloseTo(0.56667, 5)
  })

  test('are as many as the length where they are spread evenly', () => {
    fc.assert(
      fc.property(share, (taken) => {
        expect(shareOfBudsLost(Array(10).fill(7), taken)).toBeCloseTo(taken, 9)
      })
    )
  })

  test('are never fewer when more is taken', () => {
    fc.assert(
      fc.property(counts, share, share, (buds, a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a]
        expect(shareOfBudsLost(buds, less)).toBeLessThanOrEqual(shareOfBudsLost(buds, more) + 1e-12)
      })
    )
  })
})

describe('the pull at the limb’s base', () => {
  // A cantilever with the load w spread over s beyond the length l: moment w (l + s/2). Textbook statics.
  test('falls as statics say when an even crop rides on two thirds of the shoot', () => {
    const even = { counts: Array(10).fill(1), shootCm: 60, limbCm: 150 }

    const { pull } = shorten(even, 1 / 3)

    expect(pull.atLeast).toBeCloseTo(1 - (150 + 20) / (150 + 30), 9)
    expect(pull.atMost).toBeCloseTo(1 - ((2 / 3) * (150 + 20)) / (150 + 30), 9)
  })

  test('agrees with a sum over ten thousand slices of the shoot', () => {
    fc.assert(
      fc.property(counts, share, fc.integer({ min: 20, max: 150 }), (buds, taken, shootCm) => {
        fc.pre(buds.some((count) => count > 0))
        const momentOf = (left: number) => {
          let moment = 0
          for (let slice = 0; slice < 10_000; slice++) {
            const at = (slice + 0.5) / 10_000
            if (at <= left) moment += (buds[Math.floor(at * 10)] ?? 0) * (150 + at * shootCm)
          }
          return moment
        }

        const { pull } = shorten({ counts: buds, shootCm, limbCm: 150 }, taken)

        expect(pull.atMost).toBeCloseTo(1 - momentOf(1 - taken) / momentOf(1), 2)
        expect(pull.atLeast).toBeLessThanOrEqual(pull.atMost + 1e-9)
      }),
      { numRuns: 30 }
    )
  })

  test('never grows when the shoot is shortened', () => {
    fc.assert(
      fc.property(counts, share, (buds, taken) => {
        expect(shorten({ ...shoot60, counts: buds }, taken).pull.atLeast).toBeGreaterThan(-1e-9)
      })
    )
  })

  test('of a shoot without buds is none before and after', () => {
    expect(shorten({ ...shoot60, counts: Array(10).fill(0) }, 0.5).pull).toEqual({
      atLeast: 0,
      atMost: 0,
    })
  })
})
