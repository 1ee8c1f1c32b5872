import { describe, expect, test } from 'vitest'

import { checkDeal } from '@/components/crew/check-deal'
import type { Tree } from '@/lib/domain/orchard/types'
import type { State } from '@/lib/events/state'

import { aBlock, treesOf } from '../../lib/domain/an-orchard'
import { aClaim, aFlag, ann, aState, bo, idOf, lead } from '../../lib/events/a-state'

const trees = treesOf(['TTTTTT']).map((tree): Tree => ({ ...tree, species: 'apple' }))
const ground = {
  trees: new Map(trees.map((tree) => [tree.no, tree])),
  blocks: new Map([[1, aBlock()]]),
}
const [one = 0, two = 0, three = 0, four = 0] = trees.map(({ no }) => no)

function check(change: Partial<State>, picked: number[], to: string[] = [ann]) {
  return checkDeal({ state: aState(change), ground }, picked, to)
}

test('what cannot be dealt is said with its reason, its trees and who is at them; the rest can', () => {
  const checked = check(
    {
      claims: { c: aClaim(one, { [bo]: 'holder' }) },
      work: { [two]: { state: 'done', share: null } },
    },
    [one, two, three]
  )

  expect(checked).toMatchObject({
    can: [three],
    cannotCount: 2,
    cannot: [
      { code: 'tree_in_progress', trees: [one], people: [bo] },
      { code: 'tree_done', trees: [two], people: [] },
    ],
  })
})

test('a tree with two reasons is one tree', () => {
  const work = { [one]: { state: 'done', share: null } } as const
  const flags = { [idOf('flag')]: aFlag(one, 'arborist') }
  expect(check({ work, flags }, [one])).toMatchObject({ can: [], cannotCount: 1 })
})

describe('kept for others', () => {
  const deals = { [one]: [bo], [two]: [ann], [three]: [bo, lead] }

  test('who would lose trees is named', () => {
    expect(check({ deals }, [one, two, three]).fromOthers).toEqual([
      { code: 'dealt_to_another', trees: [one, three], people: [bo, lead] },
    ])
  })

  test('nobody loses what is dealt to them again, also as a pair in another order', () => {
    expect(check({ deals }, [two]).fromOthers).toEqual([])
    expect(check({ deals }, [three], [lead, bo]).fromOthers).toEqual([])
  })

  test('nothing is said before somebody is chosen, but it can be taken back', () => {
    expect(check({ deals }, [one, four], [])).toMatchObject({ fromOthers: [], dealt: [one] })
  })
})

test('ladder work next to a tree is said with who is there', () => {
  const claims = { c: { ...aClaim(two, { [bo]: 'holder' }), ladder: true } }
  expect(check({ claims }, [one, four]).nextTo).toEqual([
    { code: 'works_next_to_it', trees: [one], people: [bo] },
  ])
})
