import { describe, expect, test } from 'vitest'

import { marks } from '@/lib/domain/orchard/status'
import { drawMarks } from '@/lib/map/marks'
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

function asksFor(mark: (typeof marks)[number], trees: number, drawn: Palette = palette) {
  const { asked, context } = notebook()
  const middles = Array.from({ length: trees * 2 }, (_, at) => at * 10)
  drawMarks(context, mark, middles, { unit: 1, palette: drawn })
  return asked
}

describe.each(marks)('the mark %s', (mark) => {
  test('is filled as often for a thousand trees as for one', () => {
    const paintsFor = (trees: number) =>
      asksFor(mark, trees).filter((ask) => /^(fill|stroke) $/.test(ask)).length

    expect(paintsFor(1)).toBeGreaterThan(0)
    expect(paintsFor(1000)).toBe(paintsFor(1))
  })

  test('asks nothing where there is none', () => {
    expect(asksFor(mark, 0)).toEqual([])
  })
})

test('no two marks have the same shape, colour aside', () => {
  const grey = paletteFrom(() => 'grey')
  const shapes = marks.map((mark) => asksFor(mark, 1, grey).join('\n'))

  expect(new Set(shapes).size).toBe(marks.length)
})
