/** Which trees a cut limb of one can reach, by the referee's rule; only those that may be near are measured. */

import type { Tree } from '@/lib/domain/orchard/types'
import { areNeighbours, type Ground } from '@/lib/events/ground'
import { groupBy } from '@/lib/util/group-by'

const degreeM = 111_320

/** Asked about again and again, so that each answer is kept. */
export function nearTrees(ground: Ground, apartM: number): (no: number) => readonly number[] {
  // A fifth wider: at its southern edge a degree is wider than where the cells were counted.
  const cellM = Math.max(1, apartM) * 1.2
  const trees = [...ground.trees.values()]
  const byCell = groupBy(
    trees.filter(({ position }) => position !== null),
    (tree) => keyOfCell(...cellOf(tree, cellM))
  )
  const byPlace = groupBy(trees, placeOf)
  const known = new Map<number, readonly number[]>()
  return (no) => {
    const before = known.get(no)
    const tree = ground.trees.get(no)
    if (before || !tree) return before ?? []
    const maybe = new Set([
      ...inCells(tree, byCell, cellM),
      ...inPlaces(ground, tree, byPlace, apartM),
    ])
    const near = [...maybe].flatMap((other) =>
      areNeighbours(ground, tree, other, apartM) ? [other.no] : []
    )
    known.set(no, near)
    return near
  }
}

function cellOf({ position }: Tree, cellM: number): [number, number] {
  const { lat, lon } = position ?? { lat: 0, lon: 0 }

  const eastM = lon * degreeM * Math.cos((Math.trunc(lat) * Math.PI) / 180)
  return [Math.floor((lat * degreeM) / cellM), Math.floor(eastM / cellM)]
}

function inCells(tree: Tree, byCell: ReadonlyMap<number, Tree[]>, cellM: number): Tree[] {
  if (!tree.position) return []
  const [north, east] = cellOf(tree, cellM)
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
