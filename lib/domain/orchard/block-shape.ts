/** How a block lies on the ground, read from the trees that were surveyed. */

import { groupBy } from '@/lib/util/group-by'

import { bearingDeg, distanceM } from './distance'
import type { Block, Position, Tree } from './types'

export type BlockShape = Pick<Block, 'rowSpacingM' | 'treeSpacingM' | 'bearingDeg' | 'firstTree'>

/** Common practice, no source: what a standard orchard on foot is planted at. */
const usual = { rowSpacingM: 6, treeSpacingM: 5 }

type Surveyed = Tree & { position: Position }

/** What cannot be read is the usual spacing, or unknown. */
export function shapeOf(trees: readonly Tree[]): BlockShape {
  const surveyed = trees.filter((tree): tree is Surveyed => tree.position !== null)
  const rows = [...groupBy(surveyed, (tree) => tree.row).values()].map((row) =>
    row.toSorted((a, b) => a.place - b.place)
  )
  const bearing = bearingOf(rows)
  return {
    treeSpacingM: middleOf(rows.flatMap(treeSpacings)) ?? usual.treeSpacingM,
    rowSpacingM:
      (bearing === null ? null : middleOf(rowSpacings(rows, bearing))) ?? usual.rowSpacingM,
    bearingDeg: bearing,
    firstTree: surveyed.find((tree) => tree.row === 1 && tree.place === 1)?.position ?? null,
  }
}

/** The longest surveyed row says it best. */
function bearingOf(rows: Surveyed[][]): number | null {
  const [longest] = rows.toSorted((a, b) => spanM(b) - spanM(a))
  const from = longest?.[0]?.position
  const to = longest?.at(-1)?.position
  return from && to && from !== to ? round(bearingDeg(from, to), 1) : null
}

function spanM(row: Surveyed[]): number {
  const from = row[0]?.position
  const to = row.at(-1)?.position
  return from && to ? distanceM(from, to) : 0
}

function treeSpacings(row: Surveyed[]): number[] {
  return row.flatMap((tree, index) => {
    const next = row[index + 1]
    return next ? [distanceM(tree.position, next.position) / (next.place - tree.place)] : []
  })
}

/** From any tree of a row to any tree of the next one counts only what lies across the rows. */
function rowSpacings(rows: Surveyed[][], bearing: number): number[] {
  const inOrder = rows.toSorted((a, b) => (a[0]?.row ?? 0) - (b[0]?.row ?? 0))
  return inOrder.flatMap((row, index) => {
    const from = row[0]
    const to = inOrder[index + 1]?.[0]
    if (!from || !to) return []
    const turn = ((bearingDeg(from.position, to.position) - bearing) * Math.PI) / 180
    return [Math.abs(distanceM(from.position, to.position) * Math.sin(turn)) / (to.row - from.row)]
  })
}

/** The median, so that one surveying mistake does not bend the block. */
function middleOf(lengthsM: number[]): number | null {
  const middle = lengthsM.toSorted((a, b) => a - b)[Math.floor(lengthsM.length / 2)]
  return middle === undefined || middle < 0.1 ? null : round(middle, 2)
}

function round(value: number, digits: number): number {
  return Number(value.toFixed(digits))
}
