import { describe, expect, test } from 'vitest'

import { treeTimesOf, type Visit } from '@/lib/domain/planning/tree-times'
import { aTree } from '../an-orchard'

const tree = aTree({ no: 1, sizeClass: null, heightCm: 400 })
const visit: Visit = {
  tree: 1,
  shift: 'today',
  round: 'winter',
  result: 'done',
  seconds: 1800,
  people: 1,
  teaching: false,
}

function timesOf(...visits: Partial<Visit>[]) {
  return treeTimesOf(
    visits.map((one) => ({ ...visit, ...one })),
    new Map([[1, tree]])
  ).map(({ minutes }) => minutes)
}

describe('treeTimesOf', () => {
  test.each([
    { what: 'half an hour alone', visits: [{}], minutes: [30] },
    { what: 'two people take twice the minutes of one', visits: [{ people: 2 }], minutes: [60] },
    {
      what: 'left half done and finished on another day is one tree',
      visits: [{ shift: 'before', result: 'begun', seconds: 1200 }, {}],
      minutes: [50],
    },
    { what: 'half done and no more is no tree yet', visits: [{ result: 'begun' }], minutes: [] },
    { what: 'a lesson', visits: [{ teaching: true }], minutes: [] },
    { what: 'written down without a beginning', visits: [{ seconds: null }], minutes: [] },
    { what: 'a tap', visits: [{ seconds: 20 }], minutes: [] },
    {
      what: 'somebody else was at it, too',
      visits: [{ result: 'also_worked' }, {}],
      minutes: [30],
    },
    {
      what: 'in another round it is another tree',
      visits: [{}, { round: 'next' }],
      minutes: [30, 30],
    },
    { what: 'a tree that is no longer on the ground', visits: [{ tree: 2 }], minutes: [] },
  ] as const)('$what', ({ visits, minutes }) => {
    expect(timesOf(...visits)).toEqual(minutes)
  })

  test('says what kind of tree it was, by its height where nobody said its size', () => {
    expect(treeTimesOf([visit], new Map([[1, tree]]))).toEqual([
      { species: 'apple', size: 'medium', shift: 'today', minutes: 30 },
    ])
  })
})
