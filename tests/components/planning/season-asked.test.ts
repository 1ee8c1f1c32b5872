import { expect, test } from 'vitest'

import { seasonAsked, usualSeason } from '@/components/planning/season-asked'
import type { Tree } from '@/lib/domain/orchard/types'
import type { State } from '@/lib/events/state'
import type { WorkTimes } from '@/lib/hooks'
import { aTree } from '../../lib/domain/an-orchard'
import { aState, idOf, round, shift } from '../../lib/events/a-state'

const tree = (no: number, change: Partial<Tree> = {}) => aTree({ no, ...change })

function asked(
  trees: readonly Tree[],
  change: Partial<State> = {},
  times: Partial<WorkTimes> = {}
) {
  return seasonAsked({
    state: aState(change),
    sheet: { version: 1, trees: [...trees], blocks: [], cultivars: [] },
    ground: { trees: new Map(trees.map((one) => [one.no, one])), blocks: new Map() },
    times: { at: '2027-01-16T10:00:00.000Z', visits: [], shifts: [], ...times },
    supposed: usualSeason,
    counted: new Map(),
  })
}

test('a season asks for what stands and is neither done nor left out; what is half done is still to do', () => {
  const { trees } = asked(
    [tree(1), tree(2), tree(3), tree(4), tree(5, { life: 'dead' }), tree(6, { life: 'gap' })],
    {
      work: {
        2: { state: 'done', share: null },
        3: { state: 'left_out', share: null },
        4: { state: 'begun', share: 50 },
      },
    }
  )

  expect(trees).toHaveLength(2)
})

test('a visit counts as time at trees only with the hours of its shift', () => {
  const [visit, hours] = [
    [1, shift, round, 'done', 3600, 1, false],
    { shift, hereS: 4 * 3600, breakS: 0 },
  ] as const
  const old = [1, idOf('another shift'), round, 'done', 36_000, 1, false] as const
  const shareWith = (visits: readonly (typeof visit | typeof old)[]) =>
    asked([tree(1)], {}, { visits: visits.map((one) => [...one]), shifts: [hours] }).shareAtTrees

  expect(shareWith([visit, old])).toBe(shareWith([visit]))
  // One of four hours, and seven tenths of the four that the guess is worth.
  expect(shareWith([visit])).toBeCloseTo((1 + 0.7 * 4) / 8)
})
