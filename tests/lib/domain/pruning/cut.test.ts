import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  handTools,
  houseThreeCuts,
  isRivalOfLeader,
  lateralTakesOver,
  threeCutRules,
  threeCuts,
  toolFor,
} from '@/lib/domain/pruning/cut'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'

const inch = 2.54
const usual = {
  prunerCm: houseRuleOf({}, 'pruner_cm'),
  lopperCm: houseRuleOf({}, 'lopper_cm'),
  poleCm: houseRuleOf({}, 'pole_cm'),
  limbCm: houseRuleOf({}, 'limb_cm'),
}

// Common practice; ranges read in general references.
describe('the tool', () => {
  test.each([
    [0.5, 'pruner', false],
    [0.75, 'pruner', false],
    [0.76, 'lopper', false],
    [1.5, 'lopper', false],
    [2.1, 'saw', true],
    [3.9, 'saw', true],
  ] as const)('for a live branch of %s in is the %s', (inches, tool, inThree) => {
    const found = toolFor({ diameterCm: inches * inch, isDead: false, reach: 'within' }, usual)
    expect(found).toEqual({ state: 'ours', tool, inThree })
  })

  test.each([4.1, 4.5])('for a limb of %s in is nobody’s here: refer', (inches) => {
    for (const isDead of [true, false])
      expect(toolFor({ diameterCm: inches * inch, isDead, reach: 'within' }, usual)).toEqual({
        state: 'refer',
      })
  })

  test('for dead wood is the saw', () => {
    expect(toolFor({ diameterCm: 1, isDead: true, reach: 'within' }, usual)).toEqual({
      state: 'ours',
      tool: 'saw',
      inThree: false,
    })
  })

  // Up to an inch: ranges read in general references.
  test.each([
    [0.5, false, 'pole_pruner'],
    [1, false, 'pole_pruner'],
    [1.25, false, null],
    [0.5, true, null],
  ] as const)('above reach, for %s in, dead: %s, is %s', (inches, isDead, tool) => {
    const found = toolFor({ diameterCm: inches * inch, isDead, reach: 'above' }, usual)
    expect(found.state === 'ours' ? found.tool : null).toBe(tool)
  })

  test('above reach is never one that asks for both hands up there', () => {
    const size = fc.double({ min: 0.1, max: 30, noNaN: true })
    fc.assert(
      fc.property(size, fc.boolean(), (diameterCm, isDead) => {
        const found = toolFor({ diameterCm, isDead, reach: 'above' }, usual)
        expect(found.state === 'ours' ? found.tool : 'pole_pruner').toBe('pole_pruner')
      })
    )
  })

  test('is never a smaller one for a thicker branch, and three cuts stay three', () => {
    const size = fc.double({ min: 0.1, max: 30, noNaN: true })
    fc.assert(
      fc.property(size, size, fc.boolean(), (a, b, isDead) => {
        const [thin, thick] = [Math.min(a, b), Math.max(a, b)].map((diameterCm) =>
          toolFor({ diameterCm, isDead, reach: 'within' }, usual)
        )
        expect(rank(thin)).toBeLessThanOrEqual(rank(thick))
      })
    )
  })

  function rank(found: ReturnType<typeof toolFor> | undefined): number {
    if (found === undefined) throw new Error('no tool')
    if (found.state !== 'ours' || found.tool === 'pole_pruner') return 10
    return handTools.indexOf(found.tool) + (found.inThree ? 5 : 0)
  }
})

describe('three cuts', () => {
  const house = houseThreeCuts({
    outCm: houseRuleOf({}, 'three_cut_out_cm'),
    furtherCm: houseRuleOf({}, 'three_cut_further_cm'),
  })

  // UC IPM Pest Note 74109.
  test('by UC of a limb of 2.5 in: 0.625 in deep, 12 to 24 in out, the top cut 2 in beyond', () => {
    const cuts = threeCuts(2.5 * inch, threeCutRules.ucIpm.value)

    expect(cuts.undercutDepthCm.most / inch).toBeCloseTo(0.625)
    expect(cuts.undercutAtCm.least / inch).toBeCloseTo(12)
    expect(cuts.undercutAtCm.most / inch).toBeCloseTo(24)
    expect((cuts.topCutAtCm.least - cuts.undercutAtCm.least) / inch).toBeCloseTo(2)
  })

  // Common practice.
  test('by the house rule of a limb of 4 in: 1.333 in deep', () => {
    expect(threeCuts(4 * inch, house.value).undercutDepthCm.most / inch).toBeCloseTo(1.333, 3)
  })

  test('by any source never go more than half through from below, nor outward of the top cut', () => {
    for (const { value } of [house, ...Object.values(threeCutRules)]) {
      const cuts = threeCuts(8, value)
      expect(cuts.undercutDepthCm.most).toBeLessThanOrEqual(4)
      expect(cuts.topCutAtCm.least).toBeGreaterThanOrEqual(cuts.undercutAtCm.least)
    }
  })
})

// A third: general references, second hand.
test.each([
  [3, 0.9, false],
  [3, 1, true],
])('after %s in are removed a lateral of %s in takes over: %s', (removed, lateral, does) => {
  expect(lateralTakesOver({ removedCm: removed * inch, lateralCm: lateral * inch })).toBe(does)
})

// UC ANR 8502 (Ingels and Geisel 2014): a half.
test.each([
  [1.2, 2.2, true],
  [1.1, 2.2, false],
])('a lateral of %s in beside a leader of %s in is its rival: %s', (lateral, leader, is) => {
  expect(isRivalOfLeader({ lateralCm: lateral, leaderCm: leader })).toBe(is)
})
