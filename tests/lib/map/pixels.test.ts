import fc from 'fast-check'
import { expect, test } from 'vitest'

import { stampOf, stampOnto } from '@/lib/map/pixels'

const red = 0xff0000ff
const clear = 0

function sheet(width: number, height: number, filledWith = clear) {
  return { values: new Uint32Array(width * height).fill(filledWith), width, height }
}

test('a stamp that hangs over an edge is cut there, and nothing else is touched', () => {
  const pixels = sheet(4, 3)

  stampOnto(pixels, stampOf(new Uint32Array(9).fill(red), 3), -1, -2)
  stampOnto(pixels, stampOf(new Uint32Array(9).fill(red), 3), 3, 2)

  expect([...pixels.values]).toEqual([red, red, 0, 0, 0, 0, 0, 0, 0, 0, 0, red])
})

test('a stamp that is wholly outside leaves no trace', () => {
  const pixels = sheet(2, 2)

  stampOnto(pixels, stampOf(new Uint32Array(4).fill(red), 2), 7, 0)
  stampOnto(pixels, stampOf(new Uint32Array(4).fill(red), 2), 0, -5)

  expect([...pixels.values]).toEqual([0, 0, 0, 0])
})

// "Simple alpha compositing", Compositing and Blending Level 1, W3C: co = cs·αs + cb·αb·(1 − αs).
test('what is half clear is mixed with what is below, as a canvas does', () => {
  const channel = fc.integer({ min: 0, max: 255 })
  const colour = fc.tuple(channel, channel, channel, channel)

  fc.assert(
    fc.property(colour, colour, (above, below) => {
      const pixels = sheet(1, 1, packed(below))

      stampOnto(pixels, stampOf(new Uint32Array([packed(above)]), 1), 0, 0)

      const found = premultiplied(unpacked(pixels.values[0] ?? 0))
      const [top, bottom] = [premultiplied(above), premultiplied(below)]
      const wanted = top.map((value, at) => value + (bottom[at] ?? 0) * (1 - (top[3] ?? 0)))
      for (const [at, value] of found.entries())
        expect(Math.abs(value - (wanted[at] ?? 0))).toBeLessThan(1.01 / 255)
    }),
    { numRuns: 200 }
  )
})

type Colour = readonly [red: number, green: number, blue: number, alpha: number]

function packed([r, g, b, a]: Colour): number {
  return (r | (g << 8) | (b << 16) | (a << 24)) >>> 0
}

function unpacked(value: number): Colour {
  return [value & 255, (value >>> 8) & 255, (value >>> 16) & 255, value >>> 24]
}

function premultiplied([r, g, b, a]: Colour): number[] {
  return [r, g, b, 255].map((value) => (value / 255) * (a / 255))
}
