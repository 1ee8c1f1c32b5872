import { expect, test } from 'vitest'

import {
  countWithoutWhy,
  lookedFor,
  noWhys,
  putDownFirst,
  whysFor,
  withMe,
} from '@/components/shift/leaving'

const left = { people: ['ines', 'teo'], claims: ['claim'], tools: ['3'] }

test('who closes the shift need not be asked why they are still there', () => {
  const whys = withMe(noWhys, 'ines', left, 'Closes the shift')
  expect(whys.people).toEqual({ ines: 'Closes the shift' })
  expect(countWithoutWhy(left, whys)).toBe(3)
})

test('only who is not signed out and of whom a lead says so is looked for', () => {
  const whys = { ...noWhys, people: { teo: 'Nobody knows', ines: 'Stays', gone: 'Nobody knows' } }
  expect(lookedFor(left, whys, 'Nobody knows')).toEqual(['teo'])
})

test('a reason that a lead wrote over it stays', () => {
  const written = { ...noWhys, people: { ines: 'Sleeps in the barn' } }
  expect(withMe(written, 'ines', left, 'Closes the shift')).toEqual(written)
})

test('what was closed meanwhile needs no reason, and what came up lacks one', () => {
  const whys = {
    people: { teo: 'Seen going', gone: 'Seen going' },
    claims: { claim: '  ' },
    tools: { 3: 'Lost' },
  }
  expect(whysFor(left, whys)).toEqual({
    people: { teo: 'Seen going' },
    claims: {},
    tools: { 3: 'Lost' },
  })
  expect(countWithoutWhy(left, whys)).toBe(2)
})

test('a tree that is known to be finished, or not begun, is put down as that', () => {
  const left = { people: [], claims: ['a', 'b', 'c', 'd'], tools: [] }
  const claims = { a: 'Half', b: 'Done', c: 'Not begun', d: 'Ask Teo', gone: 'Done' }
  const words = { finished: 'Done', notBegun: 'Not begun' }

  expect(putDownFirst(left, { people: {}, claims, tools: {} }, words)).toEqual([
    { claim: 'b', isFinished: true },
    { claim: 'c', isFinished: false },
  ])
})
