/** What a printed map needs besides its trees: where row numbers stand, and how long the bar is. */

import type { Tree } from '@/lib/domain/orchard/types'
import type { BlockPicture, Dot } from '../board/block-picture'

export type RowLabel = { row: number; x: number; y: number }

/** A row's number stands before its first tree, in the line of the row. */
export function rowLabels(
  { dots, spacing }: Pick<BlockPicture, 'dots' | 'spacing'>,
  trees: ReadonlyMap<number, Tree>
): RowLabel[] {
  const rows = new Map<number, Dot[]>()
  const placeOf = (dot: Dot) => trees.get(dot.no)?.place ?? 0
  for (const dot of dots) {
    const row = trees.get(dot.no)?.row
    if (row !== undefined) rows.set(row, [...(rows.get(row) ?? []), dot])
  }
  return [...rows].flatMap(([row, inRow]) => {
    const [first, second] = inRow.toSorted((a, b) => placeOf(a) - placeOf(b))
    if (!first) return []
    const [dx, dy] = second ? [first.x - second.x, first.y - second.y] : [-1, 0]
    const length = Math.hypot(dx, dy) || 1
    return [{ row, x: first.x + (dx / length) * spacing, y: first.y + (dy / length) * spacing }]
  })
}

const metresPerFoot = 0.3048
const lengths = {
  metric: [5, 10, 20, 50, 100, 200, 500],
  us: [20, 50, 100, 200, 500, 1000, 2000].map((feet) => feet * metresPerFoot),
}

/** The longest round length that takes no more than a third of the picture. */
export function barLengthM(
  { width, scale }: Pick<BlockPicture, 'width' | 'scale'>,
  units: keyof typeof lengths
): number {
  const [shortest = 5, ...longer] = lengths[units]
  return longer.findLast((length) => length * scale <= width / 3) ?? shortest
}
