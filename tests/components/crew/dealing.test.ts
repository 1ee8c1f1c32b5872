import { describe, expect, test } from 'vitest'

import {
  type Dealing,
  noDealing,
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
