import { describe, expect, test } from 'vitest'

import { findByText } from '@/components/crew/find-by-text'
import { isOfKind, isShown, noFilter, shownKinds, toggled } from '@/components/crew/map-filter'
import { lineAfter, linesOf, pickedBetween, windowOf } from '@/components/crew/tree-table'
import type { Look } from '@/lib/domain/orchard/status'
import type { Tree } from '@/lib/domain/orchard/types'

import { aBlock, treesOf } from '../../lib/domain/an-orchard'

const plain: Look = {
  status: 'unpruned',
  badge: null,
  dealtToMe: false,
  heldByMe: false,
  dealtTo: [],
  closed: false,
  initials: [],
}
const free = { isHeld: false, isDealt: false, work: undefined }

/** Trees 1 to 4 in row 1, 5 to 8 in row 2, and the same again in a second block. */
const south = treesOf(['TTTT', 'TTTT'])
const north = south.map((tree) => ({ ...tree, no: tree.no + 100, block: 2 }))
const trees = [...south, ...north]
const blocks = [aBlock(), { ...aBlock(), no: 2, code: 'N', name: 'North' }]
const [first] = south

describe('the filter', () => {
  const [tree] = south as [Tree]

  test.each<[string, Look, Parameters<typeof isOfKind>[2], string[]]>([
    ['untouched', plain, free, ['unpruned']],
    ['kept for somebody', plain, { ...free, isDealt: true }, ['unpruned', 'dealt']],
    ['held', { ...plain, status: 'in_progress' }, { ...free, isHeld: true }, ['held']],
    [
      'left half done',
      { ...plain, status: 'in_progress' },
      { ...free, work: { state: 'begun', share: 40 } },
      ['begun'],
    ],
    [
      'done and diseased',
      { ...plain, status: 'disease', badge: 'disease' },
      { ...free, work: { state: 'done', share: null } },
      ['done', 'disease'],
    ],
    ['the arborist’s', { ...plain, status: 'arborist' }, free, ['arborist']],
    ['in a keep-out', { ...plain, closed: true }, free, ['unpruned', 'closed']],
  ])('a tree that is %s', (_, look, facts, kinds) => {
    expect(shownKinds.filter((kind) => isOfKind(kind, look, facts))).toEqual(kinds)
  })

  test('asks for one of each list, and an empty list for nothing', () => {
    const shows = (filter: Partial<typeof noFilter>) =>
      isShown({ ...noFilter, ...filter }, tree, plain, free)
    expect(shows({})).toBe(true)
    expect(shows({ blocks: [1, 2], species: [tree.species] })).toBe(true)
    expect(shows({ blocks: [2] })).toBe(false)
    expect(shows({ blocks: [1], kinds: ['done'] })).toBe(false)
    expect(toggled(toggled([1], 2), 1)).toEqual([2])
  })
})

describe('finding a tree by what is typed', () => {
  const find = (text: string) => findByText(text, { trees, blocks })

  test('block, row and place', () => {
    expect(find('N 1 2')).toMatchObject({ state: 'found', tree: { block: 2, row: 1, place: 2 } })
  })

  test('its number, or a row', () => {
    expect(find(`#${first?.no}`)).toMatchObject({ state: 'found', tree: { no: first?.no } })
    expect(find('N 2')).toMatchObject({ state: 'found', tree: { block: 2, row: 2, place: 1 } })
  })

  test('without a block the one it is, or the question in which', () => {
    expect(find('1/2')).toMatchObject({ state: 'in_which_block', trees: [{}, {}] })
    const alone = findByText('1/2', { trees: south, blocks })
    expect(alone).toMatchObject({ state: 'found', tree: { block: 1 } })
  })

  test.each([
    ['the old pear', { state: 'not_read' }],
    ['#9999', { state: 'no_number', no: 9999 }],
    ['9/9', { state: 'none_there', row: 9, place: 9 }],
    ['N 9 1', { state: 'no_row', first: 1, last: 2 }],
    ['N 9', { state: 'no_row', first: 1, last: 2 }],
    ['N 1 9', { state: 'no_place', row: 1, first: 1, last: 4 }],
  ])('%s: says what is wrong', (text, found) => {
    expect(find(text)).toEqual(found)
  })
})

describe('the table', () => {
  const facts = {
    looks: new Map<number, Look>([[105, { ...plain, status: 'done' }]]),
    dimmed: new Set<number>(),
    blocks,
    whoOf: (tree: number) => ({ 3: 'Zoe', 101: 'Álvaro' })[tree] ?? '',
    sort: 'tree',
    language: 'es',
  } as const
  const order = (some: Partial<Parameters<typeof linesOf>[1]>) =>
    linesOf(trees.toReversed(), { ...facts, ...some }).map(({ tree }) => tree.no)

  test('is in the order of the plates, by status, or by who', () => {
    expect(order({})).toEqual(trees.map(({ no }) => no))
    expect(order({ sort: 'status' }).at(-1)).toBe(105)
    expect(order({ sort: 'who' }).slice(0, 3)).toEqual([101, 3, 1])
  })

  test('has what is filtered out at its end', () => {
    expect(order({ dimmed: new Set([1, 2]) }).slice(-2)).toEqual([1, 2])
  })

  test.each([
    ['ArrowDown', 3, 4],
    ['ArrowUp', 0, 0],
    ['ArrowDown', 9, 9],
    ['PageDown', 3, 8],
    ['PageUp', 3, 0],
    ['Home', 7, 0],
    ['End', 0, 9],
    ['a', 3, null],
    ['toString', 3, null],
  ])('%s leads from line %i to %s', (key, at, to) => {
    expect(lineAfter(key, { at, count: 10, page: 5 })).toBe(to)
  })

  test('an empty one leads nowhere', () => {
    expect(lineAfter('End', { at: 0, count: 0, page: 5 })).toBeNull()
  })

  test('a range is picked in both directions, added to what was picked', () => {
    const lines = linesOf(south, facts)
    expect(pickedBetween(lines, 1, 3, [8])).toEqual([8, 2, 3, 4])
    expect(pickedBetween(lines, 3, 1, [2])).toEqual([2, 3, 4])
  })

  test('draws what is seen and a little more, however many there are', () => {
    const seen = { top: 5_600, height: 560 }
    expect(windowOf(seen, { count: 10_000, linePx: 56 })).toEqual({ first: 92, last: 118 })
    expect(windowOf({ top: 0, height: 560 }, { count: 3, linePx: 56 })).toEqual({
      first: 0,
      last: 3,
    })
    // A filter made the list shorter than where it was scrolled to.
    expect(windowOf(seen, { count: 3, linePx: 56 })).toEqual({ first: 2, last: 3 })
  })
})
