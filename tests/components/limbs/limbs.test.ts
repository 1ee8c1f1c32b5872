import { describe, expect, test } from 'vitest'

import { pointed } from '@/components/limbs/compass-bearing'
import { graded, type LimbsDraft, limbsOf, noLimbs, withLimb } from '@/components/limbs/limbs-draft'
import { density, heavySide, lightSide } from '@/components/limbs/mass'
import { sideOf } from '@/components/limbs/side-of'
import { noWeigh, shapeOf } from '@/components/limbs/weigh-draft'
import { gapsOf } from '@/lib/domain/pruning/circular'

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

describe('where a phone points', () => {
  const flat = { absolute: true, beta: 0, gamma: 0 }

  // W3C Device Orientation Event, its own examples: flat with the top to the west alpha is 90, and a heading is 360 − alpha.
  test.each([
    [{ ...flat, alpha: 90 }, 0, 270],
    [{ ...flat, alpha: 0 }, 0, 0],
    // Turned a quarter against the clock, its right side is the top of the picture.
    [{ ...flat, alpha: 90 }, 90, 0],
    // Tilted a little, to the side or up, it points where it pointed.
    [{ ...flat, alpha: 30, beta: 25, gamma: 20 }, 0, 330],
    [{ absolute: false, alpha: 10, beta: 3, gamma: 0, webkitCompassHeading: 123 }, 0, 123],
  ])('%j, the picture turned by %i°, points to %i°', (event, turnedDeg, bearingDeg) => {
    expect(pointed(event, turnedDeg)).toEqual({
      state: 'pointing',
      bearingDeg: expect.closeTo(bearingDeg, 9),
    })
  })

  test.each([
    ['upright', { ...flat, alpha: 90, beta: 80 }, 'steep'],
    ['upright, on the other side', { ...flat, alpha: 90, beta: 100 }, 'steep'],
    [
      'upright, with a heading of its own',
      { ...flat, alpha: 0, beta: 80, webkitCompassHeading: 9 },
      'steep',
    ],
    ['of which only turns are known', { ...flat, absolute: false, alpha: 90 }, 'unknown'],
    ['without a needle', { ...flat, alpha: null }, 'unknown'],
    ['not calibrated', { ...flat, alpha: 1, webkitCompassHeading: -1 }, 'unknown'],
    [
      'not calibrated, and it says so',
      { ...flat, alpha: 1, webkitCompassHeading: 9, webkitCompassAccuracy: -1 },
      'unknown',
    ],
  ])('a phone %s: %j is %s', (_, event, state) => {
    expect(pointed(event, 0)).toEqual({ state })
  })

  test('declination turns every bearing alike, and no gap between limbs', () => {
    const bearings = (byDeg: number) =>
      [350, 200, 70].map((alpha) => {
        const now = pointed({ ...flat, alpha: (alpha + byDeg) % 360 }, 0)
        return now.state === 'pointing' ? now.bearingDeg : Number.NaN
      })

    const sorted = (gaps: number[]) => gaps.toSorted((a, b) => a - b)
    const gaps = sorted(gapsOf(bearings(0)))
    expect(sorted(gapsOf(bearings(13)))).toEqual(gaps.map((gap) => expect.closeTo(gap, 9)))
  })
})
