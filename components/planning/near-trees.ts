/** Which trees a cut limb of one can reach, by the referee's rule; only those that may be near are measured. */

import type { Tree } from '@/lib/domain/orchard/types'
import { areNeighbours, type Ground } from '@/lib/events/ground'
import { groupBy } from '@/lib/util/group-by'

const degreeM = 111_320

/** Asked about again and again, so that each answer is kept. */
export function nearTrees(ground: Ground, apartM: number): (no: number) => readonly number[] {
  const trees = [...ground.trees.values()]
  const placed = trees.filter(({ position }) => position !== null)
  const cells: Cells = {
    // A fifth wider: nearer to the equator a degree is wider than where it was measured.
    sideM: Math.max(1, apartM) * 1.2,
    // The same for all: two that are side by side must not be counted by degrees of unlike width.
    shareOfDegree: Math.cos(((placed[0]?.position?.lat ?? 0) * Math.PI) / 180),
  }
  const byCell = groupBy(placed, (tree) => keyOfCell(...cellOf(tree, cells)))
  const byPlace = groupBy(trees, placeOf)
  const known = new Map<number, readonly number[]>()
  return (no) => {
    const before = known.get(no)
    const tree = ground.trees.get(no)
    if (before || !tree) return before ?? []
    const maybe = new Set([
      ...inCells(tree, byCell, cells),
      ...inPlaces(ground, tree, byPlace, apartM),
    ])
    const near = [...maybe].flatMap((other) =>
      areNeighbours(ground, tree, other, apartM) ? [other.no] : []
    )
    known.set(no, near)
    return near
  }
}

type Cells = {
  sideM: number
  /** How wide a degree of longitude is here, compared with one on the equator. */
  shareOfDegree: number
}

function cellOf({ position }: Tree, { sideM, shareOfDegree }: Cells): [number, number] {
  const { lat, lon } = position ?? { lat: 0, lon: 0 }
  const cells = (degrees: number) => Math.floor((degrees * degreeM) / sideM)
  return [cells(lat), cells(lon * shareOfDegree)]
}

function inCells(tree: Tree, byCell: ReadonlyMap<number, Tree[]>, cells: Cells): Tree[] {
  if (!tree.position) return []
  const [north, east] = cellOf(tree, cells)
  const around = [-1, 0, 1]
  return around.flatMap((up) =>
    around.flatMap((right) => byCell.get(keyOfCell(north + up, east + right)) ?? [])
  )
}

function inPlaces(
  ground: Ground,
  tree: Tree,
  byPlace: ReadonlyMap<number, Tree[]>,
  apartM: number
): Tree[] {
  const block = ground.blocks.get(tree.block)
  const reach = (spacingM = apartM) => Math.max(1, Math.ceil(apartM / Math.max(1, spacingM)))
  const [rows, places] = tree.position
    ? [1, 1]
    : [reach(block?.rowSpacingM), reach(block?.treeSpacingM)]
  const found: Tree[] = []
  for (let row = tree.row - rows; row <= tree.row + rows; row++) {
    for (let place = tree.place - places; place <= tree.place + places; place++) {
      found.push(...(byPlace.get(placeOf({ block: tree.block, row, place })) ?? []))
    }
  }
  return found
}

/** Numbers are looked up sooner than text; no orchard has so many cells, rows or places. */
function keyOfCell(north: number, east: number): number {
  return north * 2 ** 26 + east
}

function placeOf({ block, row, place }: Pick<Tree, 'block' | 'row' | 'place'>): number {
  return (block * 2 ** 16 + row) * 2 ** 16 + place
}
