import fc from 'fast-check'
import { expect, test } from 'vitest'

import { besideEachOther } from '@/lib/domain/disease/beside'
import { type FlaggedTree, treesToReplace } from '@/lib/domain/disease/replace'
import { inWalkingOrder } from '@/lib/domain/disease/scouting'
import type { Tree } from '@/lib/domain/orchard/types'

import { aBlock, treesOf } from '../an-orchard'

test('one walks up a row and down the next', () => {
  const trees = treesOf(['TTT', 'TTT', 'TTT'])
  const all = new Map(trees.map((tree) => [tree.no, tree]))

  const walked = inWalkingOrder([{ no: 9 }, { no: 4 }, { no: 1 }, { no: 3 }, { no: 6 }], all)

  expect(walked.map(({ no }) => no)).toEqual([1, 3, 6, 4, 9])
})

test('every tree is walked to once, and no row is left and come back to', () => {
  const trees = treesOf(Array.from({ length: 6 }, () => 'TTTTTTTT'))
  const all = new Map(trees.map((tree) => [tree.no, tree]))
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 48 })), (nos) => {
      const walked = inWalkingOrder(
        nos.map((no) => ({ no })),
        all
      )
      const rows = walked.map(({ no }) => all.get(no)?.row ?? 0)

      expect(walked.map(({ no }) => no).toSorted((a, b) => a - b)).toEqual(
        nos.toSorted((a, b) => a - b)
      )
      expect(rows).toEqual(rows.toSorted((a, b) => a - b))
    }),
    { numRuns: 40 }
  )
})

const flagged = (severity: FlaggedTree['severity'], confirmed = true) => [
  { sign: 'canker', severity, confirmed },
]

function proposed(change: (tree: Tree) => Tree, flags: Record<number, FlaggedTree[]>) {
  const trees = treesOf(['TTT', 'TTT']).map((tree) =>
    change({ ...tree, species: 'apricot', plantedYear: 2015 })
  )
  return treesToReplace({
    trees,
    neighbours: besideEachOther(trees, [aBlock()]),
    flags: new Map(Object.entries(flags).map(([no, own]) => [Number(no), own])),
    year: 2026,
  })
}

const old = (tree: Tree) => (tree.no === 5 ? { ...tree, plantedYear: 1996 } : tree)
const besideYoung = (tree: Tree) => (tree.no === 6 ? { ...tree, plantedYear: 2024 } : tree)

test('an old tree that is badly sick is proposed, with every reason', () => {
  expect(proposed(old, { 5: flagged('high'), 1: flagged('low') })).toEqual([
    {
      no: 5,
      reasons: [
        { code: 'badly_sick', sign: 'canker' },
        { code: 'old', years: 30, usualYears: 20 },
        { code: 'sick_neighbours', trees: 1 },
      ],
    },
  ])
})

test('a badly sick tree beside a young one is proposed', () => {
  expect(proposed(besideYoung, { 5: flagged('high') })).toEqual([
    {
      no: 5,
      reasons: [
        { code: 'badly_sick', sign: 'canker' },
        { code: 'beside_young', trees: 1 },
      ],
    },
  ])
})

test('a dead tree is proposed, whatever its age', () => {
  const dead = (tree: Tree) => (tree.no === 2 ? { ...tree, life: 'dead' as const } : tree)

  expect(proposed(dead, {})).toEqual([{ no: 2, reasons: [{ code: 'dead' }] }])
})

test.each<[string, (tree: Tree) => Tree, Record<number, FlaggedTree[]>]>([
  ['old and a little sick', old, { 5: flagged('low') }],
  ['old and only suspected', old, { 5: flagged('high', false) }],
  ['old and healthy', old, {}],
  ['badly sick in its best years', (tree) => tree, { 5: flagged('high') }],
  [
    'badly sick, and nobody knows its age',
    (tree) => ({ ...tree, plantedYear: null }),
    { 5: flagged('high') },
  ],
])('%s: not proposed', (_, change, flags) => {
  expect(proposed(change, flags)).toEqual([])
})
