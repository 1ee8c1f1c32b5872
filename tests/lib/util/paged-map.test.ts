import fc from 'fast-check'
import { expect, test } from 'vitest'

import { PagedMap } from '@/lib/util/paged-map'

const no = fc.integer({ min: 0, max: 3000 })
const entries = fc.array(
  fc.tuple(no, fc.constantFrom(...['a', 'b', 'c'].map((name) => ({ name })))),
  {
    maxLength: 60,
  }
)

test('says the same as a plain map, before and after', () => {
  fc.assert(
    fc.property(entries, entries, (first, second) => {
      const plain = [new Map(first), new Map([...first, ...second])] as const
      const before = PagedMap.empty<{ name: string }>().with(first)
      const after = before.with(second)

      const numbers = Array.from({ length: 3001 }, (_, at) => at)
      const valuesOf = (map: { get: (at: number) => unknown }) => numbers.map((at) => map.get(at))
      expect(valuesOf(before)).toEqual(valuesOf(plain[0]))
      expect(valuesOf(after)).toEqual(valuesOf(plain[1]))
      const changed = [...plain[1].keys()].filter((at) => plain[0].get(at) !== plain[1].get(at))
      expect(after.changedSince(before)).toEqual(changed.toSorted((a, b) => a - b))
      expect(before.changedSince(after)).toEqual(after.changedSince(before))
    }),
    { numRuns: 30 }
  )
})

test('is itself when nothing in it is another', () => {
  const one = { name: 'a' }
  const map = PagedMap.empty<{ name: string }>().with([[7, one]])

  expect(map.with([[7, one]])).toBe(map)
})

test('knows nothing at what is no number of anything', () => {
  const map = PagedMap.empty<{ name: string }>().with([[0, { name: 'a' }]])

  expect([Number.NaN, -1, 0.5, 1e9].map((at) => map.get(at))).toEqual(new Array(4).fill(undefined))
})
