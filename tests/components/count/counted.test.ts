/** Who is counted and who is missing. */

import { expect, test } from 'vitest'

import { headCountOf, kindsHere, seenInStop } from '@/components/count/counted'
import type { PrivatePeople, View } from '@/lib/hooks'
import { aClaim, ann, aState, bo, idOf, later, lead } from '../../lib/events/a-state'

const kid = idOf('kid')
const guest = idOf('guest')
const names = { [lead]: 'Lee', [ann]: 'Ann', [bo]: 'Bo', [kid]: 'Kid', [guest]: 'Guest' }
const { attendance, people } = aState()

const view = {
  names,
  unsent: [],
  state: aState({
    people: { ...people, [guest]: { role: 'visitor', admitted: true } },
    attendance: {
      ...attendance,
      [bo]: { state: 'break', since: later },
      [kid]: { state: 'here', since: later },
      [guest]: { state: 'here', since: later },
    },
    minors: { [kid]: { guardianId: bo } },
    claims: { [idOf('c')]: aClaim(3, { [ann]: 'holder' }) },
  }),
} as unknown as View

const contact = { phone: null, heardAt: later, heardHead: 1, joinedBy: null, lastTree: null }
const contacts: PrivatePeople = {
  [ann]: contact,
  [bo]: { ...contact, lastTree: 7 },
  [kid]: { ...contact, heardAt: null },
}

test('who may be up in a tree is missed first, who is on a break last; others at their last tree', () => {
  const { missing, found } = headCountOf(view, new Map([[lead, null]]), contacts)
  expect(missing.map(({ name, tree }) => [name, tree])).toEqual([
    ['Ann', 3],
    ['Guest', null],
    ['Kid', null],
    ['Bo', 7],
  ])
  expect(found.map(({ name }) => name)).toEqual(['Lee'])
})

test('in a stop a lead who saw somebody is told apart from an answer of their own', () => {
  const seen = seenInStop({
    answers: { [ann]: 'stopped', [kid]: 'stopped' },
    seenBy: { [kid]: lead },
  })
  const { found } = headCountOf(view, seen, contacts)
  expect(found.map(({ name, seenBy }) => [name, seenBy])).toEqual([
    ['Ann', null],
    ['Kid', lead],
  ])
})

test('visitors and children are in the number, and people on a break are not at work', () => {
  expect(kindsHere(view, contacts)).toEqual({
    all: 5,
    atWork: 1,
    free: 2,
    onBreak: 1,
    visitors: 1,
    minors: 1,
    noPhone: 1,
  })
})
