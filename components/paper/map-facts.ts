/** What a printed map needs besides its trees: where row numbers stand, and how long the bar is. */

import type { Point } from '@/lib/domain/orchard/hull'
import { groupBy } from '@/lib/util/group-by'
import type { PaperPlan, Placed, PlannedBlock } from './paper-plan'

/** `isTagged`: at this end the row's tag hangs. */
export type RowEnd = Point & { row: number; isTagged: boolean }

/** Between two numbers, so that each can be read. */
const leastUnits = 17

/** A row's number stands beyond both its ends; where rows are close, beyond every second or third. */
export function rowEnds(
  { block, trees }: Pick<PlannedBlock, 'block' | 'trees'>,
  { rowSpacing, away }: { rowSpacing: number; away: number }
): RowEnd[] {
  const rows = [...groupBy(trees, ({ tree }) => tree.row)].toSorted(([a], [b]) => a - b)
  const every = Math.max(1, Math.ceil(leastUnits / Math.max(rowSpacing, 0.1)))
  return rows.flatMap(([row, inRow], index) => {
    if (index % every !== 0 && index !== rows.length - 1) return []
    const points = inRow.toSorted((a, b) => a.tree.place - b.tree.place)
    const low = beyond(points, away)
    const high = beyond(points.toReversed(), away)
    const isLow = block.taggedEnd === 'low'
    return [
      { row, isTagged: isLow, ...low },
      { row, isTagged: !isLow, ...high },
    ]
  })
}

/** Each row as a line through its places, empty ones too. */
export function rowLines({ trees, gaps }: Pick<PlannedBlock, 'trees' | 'gaps'>): Placed[][] {
  const rows = groupBy([...trees, ...gaps], ({ tree }) => tree.row)
  return [...rows.values()].map((row) => row.toSorted((a, b) => a.tree.place - b.tree.place))
}

/** So far beyond the first of them; a lone tree has its numbers left and right. */
function beyond(points: readonly Placed[], away: number): Point {
  const [first, last] = [points[0], points.at(-1)]
  if (!first || !last) return { x: 0, y: 0 }
  const length = Math.hypot(first.x - last.x, first.y - last.y)
  const [dx, dy] =
    length === 0 ? [-1, 0] : [(first.x - last.x) / length, (first.y - last.y) / length]
  return { x: first.x + dx * away, y: first.y + dy * away }
}

const metresPerFoot = 0.3048
const lengths = {
  metric: [5, 10, 20, 50, 100, 200, 500],
  us: [20, 50, 100, 200, 500, 1000, 2000].map((feet) => feet * metresPerFoot),
}

/** The longest round length that takes no more than a third of the drawing. */
export function barLengthM(
  { width, scale }: Pick<PaperPlan, 'width' | 'scale'>,
  units: keyof typeof lengths
): number {
  const [shortest = 5, ...longer] = lengths[units]
  return longer.findLast((length) => length * scale <= width / 3) ?? shortest
}
