import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { type Openness, opennessOf, sky, wood } from '@/lib/domain/pruning/openness'
import { otsu } from '@/lib/domain/pruning/otsu'
import { chanceFrom } from '@/lib/util/chance'
import {
  blueSky,
  type Canopy,
  canopyPicture,
  darkBark,
  greySky,
  paleBark,
  whiteSky,
} from './a-canopy'
import { type Crown, photographedCrown } from './a-photographed-crown'

const usual = { side: 300, gap: 0.4, sky: blueSky, bark: darkBark } satisfies Canopy

function measured(canopy: Canopy): Openness & { trueGap: number } {
  const picture = canopyPicture(canopy)
  const found = opennessOf(picture)
  if (found.state !== 'measured') throw new Error(`Unusable: ${found.why}`)
  return { ...found, trueGap: picture.gap }
}

/** Otsu's definition, class by class: the variance between them at every level. */
function bruteForce(histogram: readonly number[]): { best: number; levels: number[] } {
  const all = histogram.reduce((sum, count) => sum + count, 0)
  const meanOf = (part: readonly number[], from: number) => {
    const count = part.reduce((sum, own) => sum + own, 0)
    return count === 0 ? 0 : part.reduce((sum, own, at) => sum + own * (from + at), 0) / count
  }
  const between = histogram.slice(0, -1).map((_, level) => {
    const [dark, bright] = [histogram.slice(0, level + 1), histogram.slice(level + 1)]
    const share = dark.reduce((sum, own) => sum + own, 0) / all
    return share * (1 - share) * (meanOf(dark, 0) - meanOf(bright, level + 1)) ** 2
  })
  const best = Math.max(...between)
  const levels = [...between.keys()].filter((level) => (between[level] ?? 0) >= best * (1 - 1e-9))
  return { best, levels }
}

describe('Otsu’s threshold', () => {
  /** A histogram of six levels, worked by hand from the definition: levels 0–2 against 3–5. */
  test('six levels', () => {
    const threshold = otsu([8, 7, 2, 6, 9, 4])

    expect(threshold?.level).toBe(2)
    expect(threshold?.darkMean).toBeCloseTo((7 + 4) / 17, 10)
    expect(threshold?.brightMean).toBeCloseTo((18 + 36 + 20) / 19, 10)
  })

  test('two peaks with nothing between are parted in the middle, and wholly', () => {
    const histogram = new Array<number>(256).fill(0)
    histogram[40] = 500
    histogram[200] = 300

    expect(otsu(histogram)).toEqual({
      level: 119,
      darkMean: 40,
      brightMean: 200,
      separability: expect.closeTo(1, 10),
    })
  })

  test('all alike, or nothing at all: no threshold', () => {
    expect(otsu([0, 0, 9, 0])).toBeNull()
    expect(otsu([0, 0, 0])).toBeNull()
  })

  test('whatever the histogram, no level sets the classes farther apart (every level tried)', () => {
    const histograms = fc.array(fc.nat({ max: 900 }), { minLength: 4, maxLength: 64 })
    fc.assert(
      fc.property(histograms, (histogram) => {
        const threshold = otsu(histogram)
        if (!threshold) return

        const { best, levels } = bruteForce(histogram)
        const [first = 0, last = 0] = [levels[0], levels.at(-1)]
        const total = histogram.reduce((sum, own) => sum + own, 0)
        const mean = histogram.reduce((sum, own, at) => sum + own * at, 0) / total
        const variance = histogram.reduce((sum, own, at) => sum + own * (at - mean) ** 2, 0) / total
        expect(threshold.level).toBeGreaterThanOrEqual(first)
        expect(threshold.level).toBeLessThanOrEqual(last)
        expect(threshold.separability).toBeCloseTo(best / variance, 8)
      }),
      { numRuns: 150 }
    )
  })
})

describe('pictures of known openness are read within two points', () => {
  test.each<[string, Partial<Canopy>]>([
    ['clear', {}],
    ['nearly closed', { gap: 0.08 }],
    ['nearly open', { gap: 0.9 }],
    ['grey sky', { sky: greySky }],
    ['white sky', { sky: whiteSky, gap: 0.55 }],
    ['pale bark', { bark: paleBark }],
    ['noise', { noise: 18 }],
    ['a lens that loses half at the edge', { vignette: 0.5 }],
    ['the same, nearly closed', { vignette: 0.5, gap: 0.15 }],
    ['glare', { glare: 60 }],
    ['noise, glare and a dark edge', { noise: 12, glare: 45, vignette: 0.4 }],
    ['the same under a grey sky', { noise: 12, glare: 35, vignette: 0.4, sky: greySky, gap: 0.65 }],
  ])('%s', (_, change) => {
    for (const seed of [1, 2, 3]) {
      const { gap, low, high, trueGap } = measured({ ...usual, ...change, seed })

      expect(Math.abs(gap - trueGap)).toBeLessThanOrEqual(0.02)
      expect(low).toBeLessThanOrEqual(trueGap)
      expect(high).toBeGreaterThanOrEqual(trueGap)
    }
  })

  test('whatever noise, light and dark edge a phone may bring', () => {
    const canopies = fc.record({
      gap: fc.double({ min: 0.1, max: 0.85, noNaN: true }),
      noise: fc.double({ min: 0, max: 14, noNaN: true }),
      vignette: fc.double({ min: 0, max: 0.45, noNaN: true }),
      glare: fc.double({ min: 0, max: 40, noNaN: true }),
      seed: fc.nat({ max: 1000 }),
    })
    fc.assert(
      fc.property(canopies, (change) => {
        const { gap, trueGap } = measured({ ...usual, side: 240, ...change })
        expect(Math.abs(gap - trueGap)).toBeLessThanOrEqual(0.02)
      }),
      { numRuns: 25 }
    )
  })
})

/** The worst that was seen of these and forty more; a threshold alone was five to eleven points too open. */
describe('a crown as a phone photographs it, twigs thinner than a pixel among it', () => {
  const usualPhoto: Crown = {
    side: 256,
    forks: 7,
    blurPx: 1,
    noise: 0.02,
    vignette: 0.3,
    cloud: 0.3,
    veil: 0.02,
  }

  test.each<[string, Partial<Crown>, within: number]>([
    ['on an ordinary day', {}, 0.03],
    ['with few twigs, under a grey sky', { forks: 4, cloud: 1 }, 0.03],
    ['in poor light, noisy', { exposure: 0.25, noise: 0.1 }, 0.03],
    ['with stray light and pale bark', { veil: 0.1, bark: 0.3 }, 0.03],
    ['from an unsteady hand, in a small file', { shakePx: 4, quality: 35 }, 0.05],
    ['so dense that a pixel holds several twigs', { forks: 9 }, 0.07],
    ['whose sky is burnt out', { exposure: 1.6, cloud: 1 }, 0.06],
  ])('%s', (_, change, within) => {
    for (const seed of [1, 2]) {
      const photo = photographedCrown({ ...usualPhoto, ...change, seed })
      const found = opennessOf(photo)
      if (found.state !== 'measured') throw new Error(found.why)

      expect(Math.abs(found.gap - photo.gap)).toBeLessThanOrEqual(within)
      expect(found.low).toBeLessThanOrEqual(photo.gap)
      expect(found.high).toBeGreaterThanOrEqual(photo.gap)
    }
  })
})

test('the mask says of each pixel of the circle what it was taken for', () => {
  const picture = canopyPicture(usual)
  const found = opennessOf(picture)
  if (found.state !== 'measured') throw new Error(found.why)
  const count = (value: number) => found.mask.filter((one) => one === value).length

  expect(found.mask[0]).toBe(0)
  expect(count(sky) / (count(sky) + count(wood))).toBeCloseTo(found.gap, 2)
  expect((count(sky) + count(wood)) / 300 ** 2).toBeCloseTo(Math.PI / 4, 2)
})

describe('how far a number can be trusted', () => {
  test('a clear picture: well', () => {
    expect(measured(usual)).toMatchObject({ confidence: 'good', doubts: [] })
  })

  test('a sky that is burnt out eats twigs, and it is said', () => {
    const found = measured({ ...usual, sky: whiteSky })

    expect(found).toMatchObject({ confidence: 'fair', doubts: ['burnt_out'] })
    expect(found.clippedShare).toBeGreaterThan(0.9)
  })

  test('a hazy one: less', () => {
    const hazy = measured({ ...usual, bark: [130, 130, 130], sky: [190, 200, 205], noise: 25 })

    expect(hazy.confidence).not.toBe('good')
    expect(hazy.doubts).toContain('soft')
    expect(hazy.high - hazy.low).toBeGreaterThan(0.04)
  })
})

describe('what cannot be read is said, and why', () => {
  test.each<[string, Canopy]>([
    ['dark', { ...usual, sky: [30, 34, 40], bark: [10, 10, 10] }],
    ['no_sky', { ...usual, gap: 0, noise: 10, bark: [70, 80, 90] }],
    ['no_wood', { ...usual, gap: 1, noise: 6, vignette: 0.4 }],
    ['sun', { ...usual, gap: 0.6, sun: 0.04 }],
    ['too_small', { ...usual, side: 120 }],
  ])('%s', (why, canopy) => {
    expect(opennessOf(canopyPicture(canopy))).toEqual({ state: 'unusable', why })
  })

  test('not_upward: sky above, ground below', () => {
    const chance = chanceFrom(4)
    const side = 400
    const data = new Uint8ClampedArray(side * side * 4)
    for (let at = 0; at < side * side; at++) {
      const own = at < 0.5 * side * side ? blueSky : darkBark
      for (let colour = 0; colour < 3; colour++)
        data[at * 4 + colour] = (own[colour] ?? 0) + 10 * chance()
      data[at * 4 + 3] = 255
    }

    expect(opennessOf({ width: side, height: side, data })).toEqual({
      state: 'unusable',
      why: 'not_upward',
    })
  })

  test('a crown that is dense on one side only is measured', () => {
    const picture = canopyPicture({ ...usual, gap: 0.9 })
    const { side } = usual
    for (let y = 0; y < side; y++)
      for (let x = 0; x < side / 2; x++)
        if (x % 6 !== 0) picture.data.set([...darkBark, 255], (y * side + x) * 4)

    expect(opennessOf(picture).state).toBe('measured')
  })

  test('a gap that shows a white sky is no sun', () => {
    const picture = canopyPicture({ ...usual, gap: 0.2 })
    const { side } = usual
    for (let y = 150; y < 230; y++)
      for (let x = 150; x < 230; x++)
        if (Math.hypot(x - 190, y - 190) < 40)
          picture.data.fill(255, (y * side + x) * 4, (y * side + x) * 4 + 4)

    expect(opennessOf(picture).state).toBe('measured')
  })
})
