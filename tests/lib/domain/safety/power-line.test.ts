import { describe, expect, test } from 'vitest'

import { freeOfLineM, lineLimitFt, lineLimitM } from '@/lib/domain/safety/power-line'

/**
 * 29 CFR 1910.269(x), read as quoted at law.cornell.edu: 10 ft to 50 kV, then 4 in for every 10 kV. The figures
 * are computed from it, a part of a step taken for a whole one.
 */
describe('what an overhead line of so many kilovolts asks', () => {
  test.each([
    [0.24, 10],
    [12.47, 10],
    [50, 10],
    [50.01, 10.3333],
    [60, 10.3333],
    [69, 10.6667],
    [115, 12.3333],
    [138, 13],
    [230, 16],
    [500, 25],
  ])('%f kV: %f ft', (kv, feet) => {
    expect(lineLimitFt(kv)).toBeCloseTo(feet, 4)
  })

  test('in metres the longer of the two systems counts', () => {
    expect(lineLimitM(25)).toBe(3.05)
    // 3.05 m and 18 steps of 0.10 m are 4.85 m; 16 ft are 4.877 m.
    expect(lineLimitM(230)).toBeCloseTo(4.8768, 4)
  })
})

test.each([
  [{ toTreeM: 9, ladderM: 2.4, toolM: 1, branchM: 2 }, 5.6],
  [{ toTreeM: 9, ladderM: 0, toolM: 1, branchM: 4 }, 5],
])(
  'a ladder that tips with the tool, or a branch that swings, takes from the distance',
  (near, freeM) => {
    expect(freeOfLineM(near)).toBeCloseTo(freeM, 9)
  }
)
