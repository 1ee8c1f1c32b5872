import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { nearTrees } from '@/components/planning/near-trees'
import { planAsked } from '@/components/planning/plan-asked'
import { rowPieces } from '@/components/planning/row-pieces'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import { planShift } from '@/lib/domain/planning/shift-plan'
import { areNeighbours } from '@/lib/events/ground'
import { asksLadder, dealRules, treeRules } from '@/lib/events/missing'
import type { State } from '@/lib/events/state'
import { chanceFrom } from '@/lib/util/chance'
import { aClaim, aFlag, aState, idOf, lead, shift } from '../../lib/events/a-state'

const block: Block = {
  no: 1,
  code: 'A',
  name: 'Mill',
  rowSpacingM: 4,
  treeSpacingM: 3,
  bearingDeg: 0,
  firstTree: null,
  taggedEnd: 'low',
}

/** Six rows of eight across the 48th parallel, each tree with what chance gives it; every second orchard was surveyed. */
function someTrees(chance: () => number): Tree[] {
  const isSurveyed = chance() < 0.5
  return Array.from({ length: 48 }, (_, at) => {
    const [row, place] = [Math.floor(at / 8) + 1, (at % 8) + 1]
    return {
      no: at + 1,
      block: 1,
      row,
      place,
      species: chance() < 0.8 ? 'apple' : 'plum',
      cultivar: null,
      sizeClass: null,
      plantedYear: null,
      heightCm: chance() < 0.8 ? 220 : 400,
      trunkCm: null,
      asksSaw: chance() < 0.1,
      life: chance() < 0.95 ? 'standing' : 'dead',
      position: isSurveyed
        ? { lat: 47.9999 + place * 0.000027 + chance() * 0.00001, lon: 2 + row * 0.000054 }
        : null,
    }
  })
}

const people = ['a', 'b', 'c', 'd', 'e', 'f'].map(idOf)

function someState(chance: () => number): State {
  const each = <Value>(value: (id: string) => Value) =>
    Object.fromEntries(people.map((id) => [id, value(id)]))
  const often = (share: number) => chance() < share
  return aState({
    me: { personId: lead, role: 'lead' },
    people: each(() => ({ role: 'volunteer' as const, admitted: true })),
    attendance: each(() => ({ state: 'here' as const, since: '2027-01-16T08:00:00.000Z' })),
    skills: each(() => ({
      ...(often(0.7) && { prunes_alone: null }),
      ...(often(0.4) && { ladder: null }),
      ...(often(0.4) && { hand_saw: '2027-01-15' }),
      ...(often(0.4) && { hand_saw: null }),
    })),
    minors: often(0.3) ? { [idOf('f')]: { guardianId: idOf('a') } } : {},
    tools: Object.fromEntries(
      people.flatMap((heldBy, at) => [
        [
          at * 2 + 1,
          { label: 'L', kind: 'ladder', fit: often(0.9), clean: true, heldBy, ownedBy: null },
        ],
        [at * 2 + 2, { label: 'S', kind: 'saw', fit: true, clean: true, heldBy, ownedBy: null }],
      ])
    ),
    claims: often(0.5) ? { [idOf('claim')]: aClaim(20, { [idOf('b')]: 'holder' }) } : {},
    flags: {
      ...(often(0.5) && { [idOf('hazard')]: { ...aFlag(1, 'arborist'), keepOutM: 5 } }),
      ...(often(0.5) && { [idOf('canker')]: aFlag(30, 'disease') }),
    },
    deals: often(0.3) ? { 40: [idOf('c')] } : {},
    work: often(0.5)
      ? { 33: { state: 'begun', share: 50 }, 34: { state: 'done', share: null } }
      : {},
  })
}

const now = '2027-01-16T10:00:00.000Z'

function planned(state: State, trees: readonly Tree[]) {
  const open = state.shifts[shift]
  if (!open) throw new Error('A shift is open.')
  const ground = {
    trees: new Map(trees.map((tree) => [tree.no, tree])),
    blocks: new Map([[1, block]]),
  }
  const known = {
    state,
    shift: { ...open, id: shift },
    sheet: { version: 1, trees: [...trees], blocks: [block], cultivars: [] },
    ground,
    times: { at: now, visits: [], shifts: [] },
    people,
    nowMs: Date.parse(now),
    endsMs: Date.parse('2027-01-16T14:00:00.000Z'),
    today: '2027-01-16',
    blocks: new Set([1]),
    near: nearTrees(ground, state.orchard.houseRules.overhead_apart_m ?? 0),
  }
  const { asked, aside } = planAsked(known)
  return { ground, asked, aside, plan: planShift(asked) }
}

describe('a shift plan', () => {
  test('deals nobody a tree that the referee would refuse', () => {
    const given = { feet: 0, overhead: 0 }
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
        const chance = chanceFrom(seed)
        const [trees, state] = [someTrees(chance), someState(chance)]
        const { plan, ground } = planned(state, trees)

        const toTeam = ({ team }: (typeof plan.teams)[number]) => team.map(({ id }) => id)
        const dealt = {
          ...state,
          deals: Object.fromEntries(
            plan.teams.flatMap((one) => one.trees.map(({ no }) => [no, toTeam(one)] as const))
          ),
        }
        for (const one of plan.teams) {
          const ids = toTeam(one)
          for (const { no } of one.trees) {
            const tree = trees.find((some) => some.no === no)
            const ladder = tree !== undefined && asksLadder(state, tree)
            const refusals = ids.map((holder) =>
              treeRules(dealt, ground, holder, {
                ladder,
                helpers: ids.filter((id) => id !== holder),
                today: '2027-01-16',
                now,
              })(no)
            )
            expect(dealRules(state, ground).refusalsOf(no)).toEqual([])
            expect(dealRules(state, ground).worksNextTo(no, ids)).toBeNull()
            expect(refusals.some((found) => found.length === 0)).toBe(true)
            given[ladder || tree?.asksSaw ? 'overhead' : 'feet']++
          }
        }
      }),
      { numRuns: 80 }
    )
    expect(Math.min(given.feet, given.overhead)).toBeGreaterThan(100)
  })

  test('knows its neighbours as the referee does', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 1000 }),
        fc.integer({ min: 3, max: 20 }),
        (seed, apartM) => {
          const trees = someTrees(chanceFrom(seed))
          const ground = {
            trees: new Map(trees.map((tree) => [tree.no, tree])),
            blocks: new Map([[1, block]]),
          }
          const near = nearTrees(ground, apartM)
          for (const tree of trees) {
            const should = trees.filter((other) => areNeighbours(ground, tree, other, apartM))
            expect(near(tree.no).toSorted((a, b) => a - b)).toEqual(should.map(({ no }) => no))
          }
        }
      ),
      { numRuns: 30 }
    )
  })
})

test('what is dealt already stays with whom it was, as work before them; of half a tree half is left', () => {
  const [whole, half, dealt] = someTrees(() => 0.5)
  if (!whole || !half || !dealt) throw new Error('There are trees.')
  const state = aState({
    deals: { [dealt.no]: [people[0] ?? ''] },
    work: { [half.no]: { state: 'begun', share: 50 } },
  })
  const { asked, aside } = planned(state, [whole, half, dealt])
  const minutes = new Map(asked.trees.map((tree) => [tree.no, tree.minutes]))

  expect([...minutes.keys()]).toEqual([whole.no, half.no])
  expect(minutes.get(half.no)).toBeCloseTo((minutes.get(whole.no) ?? 0) / 2)
  expect(aside.dealt).toBe(1)
  const at = asked.teams.findIndex((team) => team.some(({ id }) => id === people[0]))
  expect((asked.loads[at] ?? 0) * (asked.teams[at]?.length ?? 0)).toBeCloseTo(
    minutes.get(whole.no) ?? 0
  )
})

test('trees are said row by row, in the order of the walk; the same row of another block is another', () => {
  const at = (no: number, row: number, block = 1) => ({ no, block, row })

  expect(
    rowPieces([at(1, 1), at(2, 1), at(9, 2), at(8, 2), at(3, 1), at(50, 1, 2), at(51, 1, 2)])
  ).toEqual([
    { from: 1, to: 2, trees: 2 },
    { from: 9, to: 8, trees: 2 },
    { from: 3, to: 3, trees: 1 },
    { from: 50, to: 51, trees: 2 },
  ])
})
