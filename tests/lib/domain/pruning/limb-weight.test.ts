import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { carry, limitOf } from '@/lib/domain/pruning/carry-limb'
import { multipliersOf, recommendedKg } from '@/lib/domain/pruning/lifting'
import {
  densityOf,
  frustumM3,
  greenDensityKgM3,
  limbKg,
  usualFruitWoodKgM3,
} from '@/lib/domain/pruning/limb-weight'

const kgPerLb = 0.45359237
const inch = 0.0254
const foot = 0.3048

/** Wood Handbook, chapter 4: moisture of table 4-1 (read), gravities from memory. */
test.each([
  ['black cherry', 0.47, 58, 742.6],
  ['apple, heartwood', 0.61, 81, 1104.1],
  ['apple, sapwood', 0.61, 74, 1061.4],
  ['black walnut, heartwood', 0.51, 90, 969],
])('green %s', (_, gravity, moisture, density) => {
  expect(greenDensityKgM3(gravity, moisture)).toBeCloseTo(density, 1)
})

describe('the volume of a stem', () => {
  test('by hand: 10 to 5 cm over 2 m', () => {
    expect(frustumM3(0.1, 0.05, 2)).toBeCloseTo(0.009163, 6)
    expect(frustumM3(0.1, 0.05, 2) * 742.6).toBeCloseTo(6.804, 2)
  })

  test('is Newton’s rule to the last digit', () => {
    const area = (metres: number) => (Math.PI * metres ** 2) / 4
    const newton = ((area(0.12) + 4 * area(0.09) + area(0.06)) * 3) / 6

    expect(frustumM3(0.12, 0.06, 3)).toBeCloseTo(newton, 12)
  })

  test('without taper is a cylinder', () => {
    expect(frustumM3(0.08, 0.08, 1.5)).toBeCloseTo((Math.PI * 0.08 ** 2 * 1.5) / 4, 12)
  })
})

/** "Safety for Tree Workers", US National Park Service, as a quoted table: pounds of a foot of log, to the pound. */
test.each([
  ['apple', 10, 30],
  ['apple', 16, 77],
  ['apple', 20, 120],
  ['cherry', 10, 25],
  ['cherry', 18, 79],
] as const)('a foot of green %s log %i in through', (species, inches, pounds) => {
  const density = { apple: 55, cherry: 45 }[species] * (kgPerLb / foot ** 3)
  const kg = frustumM3(inches * inch, inches * inch, foot) * density

  expect(Math.abs(kg / kgPerLb - pounds)).toBeLessThan(1)
  expect(densityOf(species).value.least).toBeLessThanOrEqual(density + 1e-9)
  expect(densityOf(species).value.most).toBeGreaterThan(density)
})

test('unknown fruit wood reaches from the lightest to the heaviest that is printed, over 60 lb/ft³', () => {
  const { least, most } = densityOf('plum').value

  expect(usualFruitWoodKgM3).toBeCloseTo(961.1, 1)
  expect(least).toBeLessThan(usualFruitWoodKgM3)
  expect(most).toBeCloseTo(1217.4, 1)
})

/** Revised NIOSH lifting equation, DHHS (NIOSH) 94-110. Its pounds and kilograms differ by half a percent. */
describe('the recommended weight', () => {
  const best = { reachCm: 25, handsCm: 75, travelCm: 25, twistDeg: 0, grip: 'good' } as const

  test('of the best lift is the load constant, once a minute', () => {
    expect(recommendedKg(best)).toBeCloseTo(23 * 0.94, 9)
  })

  test('by hand: 38 cm out, from the ground, up 75 cm, fair grip', () => {
    const lift = { reachCm: 38, handsCm: 0, travelCm: 75, twistDeg: 0, grip: 'fair' } as const

    expect(recommendedKg(lift)).toBeCloseTo(9.804 * 0.94, 2)
  })

  test('of the manual’s punch press (from memory: 16.3 lb before frequency) is no more', () => {
    const press = {
      reachCm: 23 * 2.54,
      handsCm: 15 * 2.54,
      travelCm: 48 * 2.54,
      twistDeg: 0,
      grip: 'fair',
    } as const
    const pounds = recommendedKg(press) / 0.94 / kgPerLb

    expect(pounds).toBeLessThanOrEqual(16.3)
    expect(pounds).toBeGreaterThan(15.5)
  })

  test('beyond the manual’s bounds is nothing', () => {
    expect(recommendedKg({ ...best, reachCm: 64 })).toBe(0)
    expect(recommendedKg({ ...best, handsCm: 176 })).toBe(0)
    expect(recommendedKg({ ...best, travelCm: 176 })).toBe(0)
    expect(recommendedKg({ ...best, twistDeg: 136 })).toBe(0)
    expect(multipliersOf({ ...best, reachCm: 10 }).reach).toBe(1)
  })
})

describe('who takes a limb', () => {
  const rule = { species: 'apple', limitKg: 8, limbCm: 10, gradeM: 0.1 } as const
  const limb = { thickCm: 6, thinCm: 2, lengthM: 2, branches: 'bare' } as const

  test.each([
    [{ thickCm: 4, lengthM: 1 }, 'one_hand'],
    [{ thickCm: 7 }, 'one_person'],
    [{ thickCm: 10 }, 'two_people'],
    [{ thickCm: 10, lengthM: 3 }, 'in_pieces'],
    [{ thickCm: 10.1 }, 'refer'],
    [{ thickCm: 10, thinCm: 10, lengthM: 8 }, 'refer'],
  ])('%j: %s', (change, by) => {
    expect(carry({ ...limb, ...change }, rule).by).toBe(by)
  })

  test('6 to 3 in of apple, 10 ft long, is more than one person lifts at best', () => {
    // By hand at 55 lb/ft³: 62.995 lb, over the 51 lb of the best lift.
    const heavy = {
      thickCm: 6 * 2.54,
      thinCm: 3 * 2.54,
      lengthM: 10 * foot,
      branches: 'bare',
    } as const

    expect(limbKg(heavy, 'apple').least / kgPerLb).toBeCloseTo(62.995, 2)
    expect(carry(heavy, { ...rule, limbCm: 20, limitKg: 23 }).by).not.toBe('one_person')
  })

  test('a limb as it is held: never more than the equation’s best, less at arm’s length', () => {
    expect(limitOf('close', 'off_the_tree')).toBeGreaterThan(
      limitOf('at_arms_length', 'off_the_tree')
    )
    expect(limitOf('close', 'from_the_ground')).toBeLessThan(23)
  })
})

describe('whatever limb', () => {
  const shapes = fc.record({
    thickCm: fc.double({ min: 1, max: 10, noNaN: true }),
    thinShare: fc.double({ min: 0, max: 1, noNaN: true }),
    lengthM: fc.double({ min: 0.5, max: 6, noNaN: true }),
  })
  const limbOf = ({
    thickCm,
    thinShare,
    lengthM,
  }: {
    thickCm: number
    thinShare: number
    lengthM: number
  }) => ({ thickCm, thinCm: thickCm * thinShare, lengthM, branches: 'leafy' }) as const

  test('it weighs more when it is thicker, longer or in leaf, and least is less than most', () => {
    fc.assert(
      fc.property(shapes, (drawn) => {
        const limb = limbOf(drawn)
        const { least, most } = limbKg(limb, 'pear')
        expect(least).toBeLessThan(most)
        expect(limbKg({ ...limb, thickCm: limb.thickCm + 1 }, 'pear').most).toBeGreaterThan(most)
        expect(limbKg({ ...limb, lengthM: limb.lengthM + 1 }, 'pear').most).toBeGreaterThan(most)
        expect(limbKg({ ...limb, branches: 'bare' }, 'pear').most).toBeLessThan(most)
      }),
      { numRuns: 100 }
    )
  })

  test('its pieces make up the whole, and none is heavier than may be lifted', () => {
    const rule = { species: 'pear', limitKg: 7, limbCm: 10, gradeM: 0.1 } as const
    fc.assert(
      fc.property(shapes, (drawn) => {
        const limb = limbOf(drawn)
        const carried = carry(limb, rule)
        if (carried.by !== 'in_pieces') return
        const ends = carried.piecesM.map((_, at) =>
          carried.piecesM.slice(0, at + 1).reduce((sum, m) => sum + m, 0)
        )
        expect(ends.at(-1)).toBeCloseTo(limb.lengthM, 9)
        const diameterAt = (m: number) =>
          limb.thinCm + ((limb.thickCm - limb.thinCm) * m) / limb.lengthM
        carried.piecesM.forEach((lengthM, at) => {
          const end = ends[at] ?? 0
          const piece = {
            ...limb,
            lengthM,
            thickCm: diameterAt(end),
            thinCm: diameterAt(end - lengthM),
          }
          expect(limbKg(piece, 'pear').most).toBeLessThanOrEqual(7 + 1e-6)
        })
      }),
      { numRuns: 200 }
    )
  })
})
