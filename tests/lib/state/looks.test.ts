import fc from 'fast-check'
import { expect, test } from 'vitest'

import type { TreeLooks } from '@/lib/domain/orchard/status'
import type { State, Work } from '@/lib/events/state'
import { countMarks, looksAfter, looksOf } from '@/lib/state/looks'
import { startingView, type View } from '@/lib/state/view'

import { aBlock, treesOf } from '../domain/an-orchard'
import { aClaim, aFlag, ann, aState, bo, idOf, later, lead, shift } from '../events/a-state'

const block = aBlock()
const trees = treesOf(Array.from({ length: 20 }, () => 'T'.repeat(50)))
const ground = {
  trees: new Map(trees.map((tree) => [tree.no, tree])),
  blocks: new Map([[block.no, block]]),
}
const names = { [ann]: 'Ann Abel', [bo]: 'Bo Brook', [lead]: 'Lee Lark' }

function viewOf(state: State, over: typeof ground = ground): View {
  const me = { personId: ann, role: state.me.role } as NonNullable<View['me']>
  return { ...startingView, state, me, ground: over, names }
}

const heldBy = (tree: number, holder: string) => aClaim(tree, { [holder]: 'holder' })

/** Trees that are looked up, one by one. */
function counting() {
  const asked = new Set<number>()
  const counted = new Map(ground.trees)
  counted.get = (no) => {
    asked.add(no)
    return ground.trees.get(no)
  }
  return { asked, ground: { ...ground, trees: counted } }
}

test('an event costs the trees that it changes, not the thousand beside them', () => {
  const { asked, ground: counted } = counting()
  const before = aState({ work: { 3: { state: 'done', share: null } } })
  const looks = looksOf(viewOf(before, counted))
  expect(asked.size).toBe(1000)
  asked.clear()

  const after = {
    ...before,
    claims: { c: heldBy(500, bo) },
    work: { ...before.work, 7: { state: 'begun', share: 50 } as Work },
    deals: { 900: [ann] },
  }
  const next = looksOf(viewOf(after, counted))

  expect([...asked].toSorted((a, b) => a - b)).toEqual([7, 500, 900])
  expect(next.changedSince(looks)).toEqual([7, 500, 900])
  expect(countMarks(viewOf(after, counted))).toMatchObject({
    done: 1,
    in_progress: 2,
    dealt_to_me: 1,
    unpruned: 996,
  })
})

test('an event that is about no tree changes nothing', () => {
  const { asked, ground: counted } = counting()
  const before = aState()
  const looks = looksOf(viewOf(before, counted))
  asked.clear()

  const after = {
    ...before,
    attendance: { ...before.attendance, [bo]: { state: 'break', since: later } },
  }

  expect(looksOf(viewOf(after as State, counted))).toBe(looks)
  expect(asked.size).toBe(0)
})

test('whatever happens, every tree looks as if all were looked at anew', () => {
  const no = fc.integer({ min: 1, max: 1000 })
  const person = fc.constantFrom(ann, bo)
  const step = fc.oneof(
    fc
      .tuple(no, fc.constantFrom('begun', 'done', 'left_out'))
      .map(([tree, work]) => (state: State) => ({
        ...state,
        work: { ...state.work, [tree]: { state: work, share: null } as Work },
      })),
    fc.tuple(no, person).map(([tree, id]) => (state: State) => ({
      ...state,
      deals: { ...state.deals, [tree]: [id] },
    })),
    fc.tuple(no, person).map(([tree, id]) => (state: State) => ({
      ...state,
      claims: { ...state.claims, [id]: heldBy(tree, id) },
    })),
    fc.constant((state: State) => ({ ...state, claims: {} })),
    fc
      .tuple(no, fc.constantFrom('disease' as const, 'arborist' as const))
      .map(([tree, kind]) => (state: State) => ({
        ...state,
        flags: {
          ...state.flags,
          [idOf(`f${tree}`)]: aFlag(tree, kind),
        },
      })),
    fc.constant((state: State) => ({ ...state, flags: {} })),
    fc.tuple(no, person).map(([tree, id]) => (state: State) => ({
      ...state,
      calls: {
        [id]: {
          kind: 'question' as const,
          tree,
          subject: null,
          calledBy: id,
          calledAt: later,
          answeredBy: null,
          answeredAt: null,
        },
      },
    })),
    fc.boolean().map((resumed) => (state: State) => ({
      ...state,
      stops: { s: { block: 1, calledBy: bo, calledAt: later, resumed, answers: {}, seenBy: {} } },
    })),
    fc.constantFrom('lead' as const, 'volunteer' as const).map((role) => (state: State) => ({
      ...state,
      me: { ...state.me, role },
    })),
    fc.constant((state: State) => ({
      ...state,
      shifts: {
        ...state.shifts,
        [shift]: {
          ...Object.values(state.shifts)[0],
          off: { apple: 'season' },
        } as State['shifts'][string],
      },
    }))
  )

  fc.assert(
    fc.property(fc.array(step, { minLength: 3, maxLength: 8 }), (steps) => {
      let state = aState()
      let view = viewOf(state)
      let known = looksAfter(view, null)
      for (const next of steps) {
        state = next(state)
        const after = viewOf(state)
        known = looksAfter(after, { view, result: known })
        view = after
      }

      const fresh = looksAfter(view, null).looks
      const all = (looks: TreeLooks) => trees.map((tree) => looks.get(tree.no))
      expect(all(known.looks)).toEqual(all(fresh))
    }),
    { numRuns: 40 }
  )
})

test('another name, somebody else who holds the phone, and ground without the tree are seen, too', () => {
  const view = viewOf(aState({ claims: { one: heldBy(3, bo) } }))
  const known = looksAfter(view, null)
  const lookAfter = (change: Partial<View>) =>
    looksAfter({ ...view, ...change }, { view, result: known }).looks.get(3)
  const me = { ...view.me, personId: bo } as View['me']
  const trees = new Map([...ground.trees].filter(([no]) => no !== 3))

  expect(known.looks.get(3)).toMatchObject({ initials: ['BB'], heldByMe: false })
  expect(lookAfter({ names: { ...names, [bo]: 'Zoe Zell' } })?.initials).toEqual(['ZZ'])
  expect(lookAfter({ me })?.heldByMe).toBe(true)
  expect(lookAfter({ ground: { ...ground, trees } })).toBeUndefined()
})
