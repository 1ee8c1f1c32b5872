import { expect, test } from 'vitest'

import { lineWidth, pathOf } from '@/components/tree/strokes'

const square = { width: 1000, height: 1000 }

test('the bar stands across the beginning of the line, where the cut is', () => {
  const upward = [
    { x: 0.5, y: 0.8 },
    { x: 0.5, y: 0.2 },
  ]
  expect(pathOf(upward, square)).toBe('M475.0 800.0L525.0 800.0M500.0 800.0L500.0 200.0')

  const aside = [
    { x: 0.2, y: 0.5 },
    { x: 0.9, y: 0.5 },
  ]
  expect(pathOf(aside, square)).toBe('M200.0 475.0L200.0 525.0M200.0 500.0L900.0 500.0')
})

test('a finger that trembles at first does not turn the bar', () => {
  const trembling = [
    { x: 0.5, y: 0.8 },
    { x: 0.505, y: 0.8 },
    { x: 0.5, y: 0.7 },
    { x: 0.5, y: 0.2 },
  ]
  expect(pathOf(trembling, square)).toMatch(/^M475\.0 800\.0L525\.0 800\.0M/)
})

test('a tap is a bar by itself', () => {
  expect(pathOf([{ x: 0.5, y: 0.5 }], square)).toBe('M475.0 500.0L525.0 500.0M500.0 500.0')
})

test('the same stroke lies on the same wood in any size', () => {
  const stroke = [
    { x: 0.5, y: 0.8 },
    { x: 0.5, y: 0.2 },
  ]
  expect(pathOf(stroke, { width: 500, height: 500 })).toBe(
    'M237.5 400.0L262.5 400.0M250.0 400.0L250.0 100.0'
  )
  expect(lineWidth(square)).toBe(2 * lineWidth({ width: 500, height: 500 }))
})
