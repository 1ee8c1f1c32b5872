import { describe, expect, test } from 'vitest'

import { bearingOf } from '@/components/limbs/compass-bearing'
import { graded, type LimbsDraft, limbsOf, noLimbs, withLimb } from '@/components/limbs/limbs-draft'
import { density, heavySide, lightSide } from '@/components/limbs/mass'
import { sideOf } from '@/components/limbs/side-of'
import { noWeigh, shapeOf } from '@/components/limbs/weigh-draft'

describe('limbs as they are noted', () => {
  test.each([
    [-92, 270],
    [358, 0],
    [47.4, 45],
    [720, 0],
  ])('a tap at %f° is %i°', (tapped, degrees) => {
    expect(graded(tapped)).toBe(degrees)
  })

  test('a thirteenth limb is not added', () => {
    const twelve = Array.from({ length: 12 }).reduce<LimbsDraft>(
      (draft, _, at) => withLimb(draft, at * 30),
      noLimbs
    )

    expect(twelve.limbs).toHaveLength(12)
    expect(withLimb(twelve, 5)).toEqual(twelve)
  })

  test('are in centimetres inside, and a thickness that cannot be counts for nothing', () => {
    const [limb] = withLimb(noLimbs, 90).limbs
    const draft = {
      keep: 3,
      limbs: [
        { ...limb, bearingDeg: 90, condition: 'worn', thick: '4', angle: '45' },
        { ...limb, bearingDeg: 90, condition: 'sound', thick: '-1', angle: '95' },
      ],
    } as const

    expect(limbsOf(draft, 'us')).toEqual([
      { bearingDeg: 90, condition: 'worn', thickCm: 10.16, angleDeg: 45 },
      { bearingDeg: 90, condition: 'sound', thickCm: null, angleDeg: null },
    ])
  })

  test.each([
    [0, 'n'],
    [22, 'n'],
    [23, 'ne'],
    [338, 'n'],
    [225, 'sw'],
  ])('%i° is called %s', (degrees, side) => {
    expect(sideOf(degrees)).toBe(side)
  })
})

describe('a weight', () => {
  test('is rounded to the heavy side, what may be lifted to the light one', () => {
    expect([heavySide(14.2, 'metric'), lightSide(14.8, 'metric')]).toEqual(['15 kg', '14 kg'])
    // 1 lb = 0.45359237 kg.
    expect([heavySide(4.5359237, 'us'), lightSide(4.5359237, 'us')]).toEqual(['10 lb', '10 lb'])
    expect(density(961.1, 'us')).toBe('60 lb/ft³')
  })

  test('waits for thickness and length; without an outer end the limb does not taper', () => {
    expect(shapeOf({ ...noWeigh, thick: '9' }, 'metric')).toBeNull()
    expect(shapeOf({ ...noWeigh, thick: 'x', length: '2' }, 'metric')).toBeNull()
    expect(shapeOf({ ...noWeigh, thick: '9', length: '2' }, 'metric')).toMatchObject({
      thickCm: 9,
      thinCm: 9,
      lengthM: 2,
    })
  })
})

/** W3C Device Orientation Event: alpha grows against the clock, and means north only where it is absolute. */
test.each([
  [{ absolute: true, alpha: 90 }, 270],
  [{ absolute: false, alpha: 90 }, null],
  [{ absolute: true, alpha: null }, null],
  [{ absolute: false, alpha: 10, webkitCompassHeading: 123 }, 123],
  [{ absolute: false, alpha: 10, webkitCompassHeading: -1 }, null],
])('a phone that says %j points to %j', (event, bearingDeg) => {
  expect(bearingOf(event)).toBe(bearingDeg)
})
