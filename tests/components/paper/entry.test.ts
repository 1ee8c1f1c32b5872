import { describe, expect, test } from 'vitest'

import { emptyTyped, type Reader, readEntry, type Typed } from '@/components/paper/entry'
import { clockTyped, shareTyped, treeTyped } from '@/components/paper/read-typed'
import { inSendingOrder } from '@/components/paper/sending-order'
import { aBlock, aTree } from '../../lib/domain/an-orchard'

const blocks = [aBlock(), aBlock({ no: 2, code: 'C', name: 'Creek' })]
const trees = [aTree({ no: 1, row: 7, place: 14 }), aTree({ no: 2, block: 2, row: 7, place: 14 })]

describe('times', () => {
  test.each([
    ['9:40', '09:40'],
    ['09:40', '09:40'],
    ['9.40', '09:40'],
    ['940', '09:40'],
    ['1015', '10:15'],
    ['9h40', '09:40'],
    [' 9 ', '09:00'],
    ['2:10 pm', '14:10'],
    ['12:05 am', '00:05'],
    ['12 p.m.', '12:00'],
  ])('%s is %s', (typed, clock) => expect(clockTyped(typed)).toBe(clock))

  test.each(['', 'noon', '24:00', '9:60', '13 pm', '12345', '9:4'])('%j is no time', (typed) =>
    expect(clockTyped(typed)).toBeNull()
  )
})

test.each([
  ['60', 60],
  ['60 %', 60],
  ['0', null],
  ['100', null],
  ['half', null],
])('the share %j is %j', (typed, share) => expect(shareTyped(typed)).toBe(share))

const reader: Reader = {
  blocks,
  trees,
  lastBlock: null,
  timeZone: 'Europe/Madrid',
  date: '2027-01-16',
}

test('a tree is found with its block, and without it in the block of the line before', () => {
  expect(treeTyped('c7 14', reader)?.no).toBe(2)
  expect(treeTyped('7/14', { ...reader, lastBlock: 1 })?.no).toBe(1)
  expect(treeTyped('7/14', reader)).toBeNull()
  expect(treeTyped('s 7 99', reader)).toBeNull()
})

const line = (part: Partial<Typed>) => readEntry({ ...emptyTyped, person: 'ann', ...part }, reader)
const tag = 'S 7·14'

describe('a line', () => {
  test('of a finished tree says when, on the orchard’s clock', () => {
    expect(line({ tree: tag, at: '9:40', begun: '9.15' })).toEqual({
      state: 'whole',
      entered: {
        name: 'enter_work',
        person: 'ann',
        at: '2027-01-16T08:40:00.000Z',
        args: {
          tree: 1,
          at: '2027-01-16T08:40:00.000Z',
          begunAt: '2027-01-16T08:15:00.000Z',
          share: null,
          note: null,
        },
      },
    })
  })

  test('names every field that is not understood, and loses none', () => {
    expect(line({ person: '', tree: 'the big one', at: 'noon', share: 'half' })).toEqual({
      state: 'faulty',
      fields: ['person', 'tree', 'share', 'at'],
    })
    expect(line({ tree: tag, at: '9:40', begun: '10:00' })).toMatchObject({ fields: ['begun'] })
  })

  test('of somebody who came and went may leave out what is known', () => {
    expect(line({ sort: 'attendance', left: '12:00' })).toMatchObject({
      entered: { args: { arrivedAt: null, breaks: [], leftAt: '2027-01-16T11:00:00.000Z' } },
    })
    expect(line({ sort: 'attendance' })).toMatchObject({ fields: ['arrived'] })
    expect(line({ sort: 'attendance', arrived: '12:00', left: '9:00' })).toMatchObject({
      fields: ['left'],
    })
    expect(line({ sort: 'attendance', arrived: '8:00', breakFrom: '9:00' })).toMatchObject({
      fields: ['breakTo'],
    })
  })

  test('of a flag keeps in its note when it was seen', () => {
    expect(
      line({
        sort: 'flag',
        tree: tag,
        sign: 'arborist hanging_limb',
        at: '10:31',
        note: 'East side',
      })
    ).toMatchObject({
      entered: {
        name: 'flag_tree',
        args: { kind: 'arborist', severity: 'danger_now', note: '10:31 · East side' },
      },
    })
    expect(line({ sort: 'flag', tree: tag, at: '10:31' })).toMatchObject({ fields: ['sign'] })
  })
})

test('arrivals go out first and leavings last, whatever the order of the lines', () => {
  const typed: Partial<Typed>[] = [
    { sort: 'attendance', left: '12:00' },
    { tree: tag, at: '11:00' },
    { tree: tag, at: '9:00', share: '30' },
    { sort: 'attendance', arrived: '8:00' },
  ]
  const lines = typed.map((part, at) => {
    const read = line(part)
    if (read.state !== 'whole') throw new Error('Not a whole line.')
    const entry = { id: String(at), date: reader.date, typed: emptyTyped, outcome: null }
    return { entry, entered: read.entered }
  })

  expect(inSendingOrder(lines).map(({ entry }) => entry.id)).toEqual(['3', '2', '1', '0'])
})
