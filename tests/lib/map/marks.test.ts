import { expect, test } from 'vitest'

import { marks } from '@/lib/domain/orchard/status'
import { drawMark } from '@/lib/map/marks'
import { type Palette, paletteFrom } from '@/lib/map/palette'

const palette = paletteFrom((token) => token)

/** A canvas that writes down what is asked of it. */
function notebook() {
  const asked: string[] = []
  const context = new Proxy({} as CanvasRenderingContext2D, {
    get:
      (_, name) =>
      (...args: unknown[]) =>
        asked.push(`${String(name)} ${args.join(' ')}`),
    set: (_, name, value) => asked.push(`${String(name)} = ${value}`) > 0,
  })
  return { asked, context }
}

function asksFor(mark: (typeof marks)[number], drawn: Palette = palette, sidePx = 17) {
  const { asked, context } = notebook()
  drawMark(context, mark, sidePx, drawn)
  return asked
}

test('no two marks have the same shape, colour aside', () => {
  const grey = paletteFrom(() => 'grey')
  const shapes = marks.map((mark) => asksFor(mark, grey).join('\n'))

  expect(new Set(shapes).size).toBe(marks.length)
})

test('no line of the smallest mark is thinner than a pixel', () => {
  for (const mark of marks)
    for (const ask of asksFor(mark, palette, 8)) {
      const [, width] = ask.match(/^lineWidth = (.+)$/) ?? []
      // Eight pixels for seventeen units.
      if (width !== undefined) expect((Number(width) * 8) / 17).toBeGreaterThanOrEqual(0.999)
    }
})

test('a mark has the colours of its meaning', () => {
  expect(asksFor('done')).toContain('fillStyle = --map-done')
  expect(asksFor('arborist')).toContain('fillStyle = --arb')
  expect(asksFor('dealt_to_me')).toContain('fillStyle = --called')
})
