import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import {
  cleanAfter,
  cleaningPolicies,
  cutAtCm,
  cutBelow,
  diseaseFacts,
  mayBe,
  woodOf,
} from '@/lib/domain/disease/sanitation'
import { species } from '@/lib/domain/orchard/types'

function distanceOf(disease: (typeof diseaseFacts)[number]['disease']) {
  return diseaseFacts.find((one) => one.disease === disease)?.belowCm
}

describe('how far below the last sign', () => {
  test('UC IPM: Eutypa at least 1 ft, so a canker that ends 40 cm from the tip is cut at 70.5 cm', () => {
    const below = { belowCm: distanceOf('eutypa')?.growing.least ?? 0 }
    expect(cutAtCm(40, below)).toBeCloseTo(70.48, 2)
  })

  test('WSU 2025: bacterial canker 12.7 cm', () => {
    expect(distanceOf('bacterial_canker')?.growing.least).toBeCloseTo(12.7)
  })

  test('WSU 2018: fire blight in growth 30.5 to 45.7 cm; UC IPM: dormant 20.3 to 30.5 cm', () => {
    expect(distanceOf('fire_blight')?.growing.least).toBeCloseTo(30.48)
    expect(distanceOf('fire_blight')?.growing.most).toBeCloseTo(45.72)
    expect(distanceOf('fire_blight')?.dormant.least).toBeCloseTo(20.32)
    expect(distanceOf('fire_blight')?.dormant.most).toBeCloseTo(30.48)
  })

  test('of all that a sign may be the longest is asked for', () => {
    expect(cutBelow(['canker'], 'cherry', 'growing')).toMatchObject({ disease: 'eutypa' })
    expect(cutBelow(['canker'], 'peach', 'growing')).toMatchObject({ disease: 'bacterial_canker' })
    expect(cutBelow(['dead_twigs'], 'pear', 'growing')?.belowCm).toBeCloseTo(45.72)
  })

  test('no number is made up where no source gives one', () => {
    expect(cutBelow(['spots'], 'peach', 'growing')).toBeNull()
    expect(cutBelow(['canker'], 'fig', 'growing')).toBeNull()
    expect(cutBelow(['other'], 'apricot', 'growing')).toBeNull()
  })

  test('never shrinks when another sign is seen, nor when the tree grows', () => {
    const sign = fc.constantFrom('gum', 'canker', 'dead_twigs', 'spots', 'other')
    fc.assert(
      fc.property(fc.constantFrom(...species), sign, sign, (each, one, more) => {
        const cm = (signs: string[], growth: 'dormant' | 'growing') =>
          cutBelow(signs, each, growth)?.belowCm ?? 0

        expect(cm([one, more], 'growing')).toBeGreaterThanOrEqual(cm([one], 'growing'))
        expect(cm([one], 'growing')).toBeGreaterThanOrEqual(cm([one], 'dormant'))
      })
    )
  })
})

test('the wood of what may be fire blight is bagged, and of what may be Eutypa leaves no pile', () => {
  expect(woodOf(['canker'], 'pear')).toBe('bag')
  expect(woodOf(['gum'], 'apricot')).toBe('leave_no_pile')
  expect(woodOf(['spots'], 'fig')).toBe('carry_away')
})

test('fire blight is no disease of stone fruit', () => {
  expect(mayBe('canker', 'apricot').map(({ disease }) => disease)).not.toContain('fire_blight')
})

// UC: when cutting into infected wood. Illinois: only in the growing season. WSU: speed matters more.
test.each([
  ['each_cut', 'dormant', 'each_cut'],
  ['each_cut', 'growing', 'each_cut'],
  ['when_growing', 'dormant', 'each_tree'],
  ['when_growing', 'growing', 'each_cut'],
  ['each_tree', 'growing', 'each_tree'],
] as const)('by the policy %s, %s, one cleans after %s', (policy, growth, after) => {
  expect(cleaningPolicies).toContain(policy)
  expect(cleanAfter(policy, growth)).toBe(after)
})
