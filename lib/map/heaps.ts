/**
 * Trees too close together to be seen singly, a square of ground at a time: each square shows
 * what asks most among its trees, in a mark that is large enough for its shape.
 */

import type { Mark } from '@/lib/domain/orchard/status'

import type { Box } from './grid-index'
import type { Picture } from './paint'
import type { Point } from './plane'
import { boxToPlane, heapPx } from './view'

/** At the middle of its square, in units of the plane. */
export type Heap = Point & { mark: Mark; isSelected: boolean; isFaint: boolean }

/** A square is done when all of it is done, and a single hazard is never lost among hundreds. */
const whatAsksMost: readonly Mark[] = [
  'held_by_me',
  'arborist',
  'disease',
  'dealt_to_me',
  'in_progress',
  'closed',
  'dealt',
  'unpruned',
  'done',
]

const ranks = new Map(whatAsksMost.map((mark, rank) => [mark, rank]))
const diseaseRank = ranks.get('disease') ?? 0

type Grid = {
  side: number
  /** Of the first square, counted from the plane's origin so that it stays when the map moves. */
  column: number
  row: number
  columns: number
  rows: number
}

export function heapsIn(picture: HeapedPicture, square: Box): Heap[] {
  const grid = gridOver(picture, square)
  const cells = new Array<Cell | undefined>(grid.columns * grid.rows)
  const { scene } = picture
  for (const index of scene.index.within(boxOfGrid(grid))) {
    const column = Math.floor((scene.xs[index] ?? 0) / grid.side) - grid.column
    const row = Math.floor((scene.ys[index] ?? 0) / grid.side) - grid.row
    // Exactly on the far edge: it belongs to the next square.
    if (column >= grid.columns || row >= grid.rows) continue
    const at = row * grid.columns + column
    const cell = cells[at] ?? { rank: whatAsksMost.length, isSelected: true, isFaint: true }
    cells[at] = cell
    addTree(cell, picture, index)
  }
  return cells.flatMap((cell, at) => (cell ? heapOf(cell, grid, at) : []))
}

export type HeapedPicture = Pick<Picture, 'scene' | 'looks' | 'view' | 'selected' | 'dimmed'>

type Cell = { rank: number; isSelected: boolean; isFaint: boolean }

function addTree(cell: Cell, picture: HeapedPicture, index: number): void {
  const { scene, looks, selected, dimmed } = picture
  const no = scene.trees[index]?.no ?? 0
  const rank = ranks.get(looks.markAt(index)) ?? whatAsksMost.length
  const own = looks.hasDiseaseBadge(index) ? Math.min(rank, diseaseRank) : rank
  if (!selected.has(no)) cell.isSelected = false
  if (dimmed.has(no) && !cell.isFaint) return
  // The first that is not filtered out begins anew: what is faint says nothing beside it.
  cell.rank = cell.isFaint && !dimmed.has(no) ? own : Math.min(cell.rank, own)
  if (!dimmed.has(no)) cell.isFaint = false
}

function heapOf({ rank, isSelected, isFaint }: Cell, grid: Grid, at: number): Heap[] {
  const mark = whatAsksMost[rank]
  if (!mark) return []
  const column = grid.column + (at % grid.columns)
  const row = grid.row + Math.floor(at / grid.columns)
  return [{ x: (column + 0.5) * grid.side, y: (row + 0.5) * grid.side, mark, isSelected, isFaint }]
}

/** Whole squares, and one more on each side whose stamp reaches in. */
function gridOver({ view }: HeapedPicture, square: Box): Grid {
  const side = heapPx / view.scale
  const { minX, minY, maxX, maxY } = boxToPlane(view, square, heapPx)
  const [column, row] = [Math.floor(minX / side), Math.floor(minY / side)]
  const [lastColumn, lastRow] = [Math.floor(maxX / side), Math.floor(maxY / side)]
  return { side, column, row, columns: lastColumn - column + 1, rows: lastRow - row + 1 }
}

function boxOfGrid({ side, column, row, columns, rows }: Grid): Box {
  return {
    minX: column * side,
    minY: row * side,
    maxX: (column + columns) * side,
    maxY: (row + rows) * side,
  }
}
