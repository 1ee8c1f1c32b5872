import fc from 'fast-check'
import { describe, expect, test } from 'vitest'

import { groundOf } from '@/lib/domain/planning/ground'
import { type NextTreeQuestion, nextTree } from '@/lib/domain/planning/next-tree'
import { walksFrom } from '@/lib/domain/planning/walk'

import { aBlock, treesOf } from '../an-orchard'

const trees = treesOf(['TTTTT', 'TTTTT', 'TTTTT', 'TTTTT'])
const ground = groundOf(trees, [aBlock()])

function ask(question: Partial<NextTreeQuestion<string>> & { fromNo?: number }) {
  const from = trees.find((tree) => tree.no === question.fromNo) ?? null
  const answer = nextTree({
    candidates: trees.filter((tree) => tree !== from),
    from,
    dealtToMe: new Set(),
    diseased: new Set(),
    refusalsOf: () => [],
    walkM: from ? walksFrom(ground, from.no) : () => Number.POSITIVE_INFINITY,
    ...question,
  })
  return answer.state === 'found' ? [answer.tree.no, answer.why] : answer
}

// Numbers run along the rows: row 1 has 1 to 5, row 2 has 6 to 10, and so on.
describe('the next tree', () => {
  test('a dealt tree comes before everything nearer', () => {
    expect(ask({ fromNo: 1, dealtToMe: new Set([20]) })).toEqual([20, 'dealt'])
  })

  test('of dealt trees, the one with the shortest way on foot, not as the crow flies', () => {
    // Two rows over is 8 m away through the row, but 28 m round its end; along mine it is 8 m.
    expect(ask({ fromNo: 3, dealtToMe: new Set([5, 13]) })).toEqual([5, 'dealt'])
  })

  test('a dealt tree that is refused is passed over', () => {
    const refusalsOf = ({ no }: { no: number }) => (no === 20 ? ['tree_held'] : [])

    expect(ask({ fromNo: 1, dealtToMe: new Set([20]), refusalsOf })).toEqual([2, 'same_row'])
  })

  test('my own row comes before a nearer tree across the alley', () => {
    const candidates = trees.filter(({ no }) => no === 5 || no === 6)

    expect(ask({ fromNo: 1, candidates })).toEqual([5, 'same_row'])
  })

  test('healthy trees come before flagged ones, also when those are nearer', () => {
    expect(ask({ fromNo: 1, diseased: new Set([2, 3]) })).toEqual([4, 'same_row'])
    expect(ask({ fromNo: 1, dealtToMe: new Set([2, 20]), diseased: new Set([2]) })).toEqual([
      20,
      'dealt',
    ])
  })

  test('a flagged tree is still found when it is the last', () => {
    expect(ask({ fromNo: 1, dealtToMe: new Set([2]), diseased: new Set([2]) })).toEqual([
      2,
      'dealt',
    ])
  })

  test('from nowhere in particular, the first on the plates', () => {
    expect(ask({})).toEqual([1, 'nearest'])
  })

  test('when nothing is left, every reason is counted with its trees', () => {
    const refusalsOf = ({ no }: { no: number }) =>
      no <= 4 ? ['tree_held', 'needs_ladder'] : ['needs_ladder']

    expect(ask({ fromNo: 1, refusalsOf })).toEqual({
      state: 'nothing_left',
      refusedTrees: new Map([
        ['tree_held', 3],
        ['needs_ladder', 19],
      ]),
    })
  })
})

test('no allowed tree beats the one that is named (every pair compared)', () => {
  const someNos = fc.uniqueArray(fc.integer({ min: 1, max: 20 })).map((nos) => new Set(nos))

  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 20 }),
      someNos,
      someNos,
      someNos,
      (fromNo, dealtToMe, diseased, refused) => {
        const from = trees[fromNo - 1] ?? null
        const walkM = walksFrom(ground, fromNo)
        const candidates = trees.filter(({ no }) => no !== fromNo)

        const answer = nextTree({
          candidates,
          from,
          dealtToMe,
          diseased,
          refusalsOf: ({ no }) => (refused.has(no) ? ['no'] : []),
          walkM,
        })

        const allowed = candidates.filter(({ no }) => !refused.has(no))
        if (answer.state === 'nothing_left') return expect(allowed).toEqual([])
        const dealt = allowed.filter(({ no }) => dealtToMe.has(no))
        const row = allowed.filter((tree) => tree.row === from?.row)
        const group = [dealt, row, allowed].find((group) => group.length > 0) ?? []
        const healthy = group.filter(({ no }) => !diseased.has(no))
        const rivals = healthy.length > 0 ? healthy : group
        expect(rivals).toContain(answer.tree)
        for (const rival of rivals)
          expect(walkM(rival.no)).toBeGreaterThanOrEqual(answer.walkM ?? 0)
      }
    )
  )
})
