import { expect, test } from 'vitest'

import { diseaseShown, othersThan, sickFirst } from '@/components/disease/disease-shown'
import { casesOf, signsOf } from '@/components/disease/question'
import type { Look } from '@/lib/domain/orchard/status'
import type { Flag } from '@/lib/events/state'
import { PagedMap } from '@/lib/util/paged-map'

function flag(tree: number, more: Partial<Flag> = {}): Flag {
  return {
    tree,
    kind: 'disease',
    state: 'suspected',
    sign: 'gum',
    severity: 'low',
    keepOutM: null,
    raisedBy: 'ann',
    raisedAt: '2026-11-24T09:00:00.000Z',
    inside: {},
    photos: [],
    notes: 0,
    reasons: null,
    limb: null,
    ...more,
  }
}

const flags = {
  a: flag(1),
  b: flag(1, { sign: 'canker', state: 'confirmed' }),
  c: flag(2, { state: 'confirmed' }),
  d: flag(3),
  e: flag(4, { kind: 'arborist', state: 'open', sign: 'crack' }),
}

test('each tree counts once, and confirmed goes before suspected', () => {
  const all = casesOf(flags, { sign: null, confirmedOnly: false })

  expect(all).toEqual([
    { no: 1, sign: 'canker', confirmed: true },
    { no: 2, sign: 'gum', confirmed: true },
    { no: 3, sign: 'gum', confirmed: false },
  ])
})

test('one sign, or only what is confirmed', () => {
  expect(casesOf(flags, { sign: 'gum', confirmedOnly: false }).map(({ no }) => no)).toEqual([
    1, 2, 3,
  ])
  expect(casesOf(flags, { sign: 'gum', confirmedOnly: true }).map(({ no }) => no)).toEqual([2])
})

test('signs come with how many trees carry them, the most first', () => {
  expect(signsOf(flags)).toEqual([
    { sign: 'gum', trees: 3 },
    { sign: 'canker', trees: 1 },
  ])
})

test('the map is told which are confirmed, which suspected, and which to look at', () => {
  const shown = diseaseShown(casesOf(flags, { sign: null, confirmedOnly: false }), {
    incidence: null,
    pattern: { state: 'not_defined', why: 'no_trees' },
    toScout: [{ no: 5, ring: 1, sickNeighbours: 1, kin: 'same_kind', nearestM: 4 }],
    toReplace: [],
  })

  expect(shown).toEqual({
    confirmed: new Set([1, 2]),
    suspected: new Set([3]),
    toScout: new Set([5]),
  })
  expect(othersThan(shown, [{ no: 1 }, { no: 5 }, { no: 6 }])).toEqual(new Set([6]))
})

test('nothing steps back where nothing is sick', () => {
  expect(othersThan(diseaseShown([], null), [{ no: 1 }])).toEqual(new Set())
})

test('a sick tree shows its disease also where its work is done, but never before a hazard', () => {
  const look = (status: Look['status']): Look => ({
    status,
    badge: 'disease',
    dealtToMe: false,
    heldByMe: false,
    dealtTo: [],
    closed: false,
    initials: [],
  })
  const looks = PagedMap.empty<Look>().with([
    [1, look('done')],
    [2, look('arborist')],
    [6, look('done')],
  ])
  const shown = diseaseShown(casesOf(flags, { sign: null, confirmedOnly: false }), null)

  const sick = sickFirst(looks, shown)

  expect([1, 2, 6].map((no) => sick.get(no)?.status)).toEqual(['disease', 'arborist', 'done'])
})
