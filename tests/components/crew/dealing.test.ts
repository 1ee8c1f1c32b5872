import { describe, expect, test } from 'vitest'

import {
  type Dealing,
  noDealing,
  pickedIn,
  settled,
  splitRefused,
  togglePerson,
  togglePicked,
  toggleRow,
} from '@/components/crew/dealing'

const twelve: Dealing = { trees: [1, 2, 3, 4], to: ['fenna'], strokes: [] }

test('a tree that is tapped twice is not picked', () => {
  const once = togglePicked(noDealing, 7)
  expect(once.trees).toEqual([7])
  expect(togglePicked(once, 7).trees).toEqual([])
})

test('a row is picked whole, also where a part of it was picked, and dropped whole', () => {
  const part = togglePicked(noDealing, 2)
  const whole = toggleRow(part, [1, 2, 3])
  expect([...whole.trees].sort()).toEqual([1, 2, 3])
  expect(toggleRow(whole, [1, 2, 3]).trees).toEqual([])
})

test('a row where nothing is left to do changes nothing', () => {
  expect(toggleRow(twelve, [])).toEqual(twelve)
})

test('trees go to one person or a pair; a third takes the place of the first', () => {
  const pair = togglePerson(togglePerson(noDealing, 'fenna'), 'oskar')
  expect(pair.to).toEqual(['fenna', 'oskar'])
  expect(togglePerson(pair, 'teo').to).toEqual(['oskar', 'teo'])
  expect(togglePerson(pair, 'fenna').to).toEqual(['oskar'])
})

describe('a refused deal', () => {
  test('names each reason with its trees, and what can be dealt without them', () => {
    const refused = [
      { code: 'tree_done', detail: { trees: [1] } },
      { code: 'tree_in_progress', detail: { trees: [1, 3] } },
    ]
    expect(splitRefused(twelve, refused)).toEqual({
      reasons: [
        { code: 'tree_done', trees: [1] },
        { code: 'tree_in_progress', trees: [1, 3] },
      ],
      rest: [2, 4],
    })
  })

  test('for a reason that names no tree leaves nothing to deal', () => {
    expect(splitRefused(twelve, [{ code: 'no_round' }]).rest).toEqual([])
  })
})

describe('what is drawn around', () => {
  const corner = { x: 1, y: 2 }
  const drawing: Dealing = {
    trees: [1, 2],
    to: [],
    strokes: [
      { corners: [corner], inside: [] },
      { corners: [corner], inside: [2, 3] },
    ],
  }

  test('is picked as soon as the line is drawn, each tree once', () => {
    expect(pickedIn(drawing)).toEqual([1, 2, 3])
  })

  test('a line taken back leaves what was inside before', () => {
    expect(pickedIn({ ...drawing, strokes: drawing.strokes.slice(0, 1) })).toEqual([1, 2])
  })

  test('is picked like everything else afterwards: a tap drops one of it', () => {
    expect(settled(drawing)).toEqual({ trees: [1, 2, 3], to: [], strokes: [] })
    expect(togglePicked(drawing, 3).trees).toEqual([1, 2])
    expect(toggleRow(drawing, [3, 4]).trees).toEqual([1, 2, 3, 4])
  })
})
