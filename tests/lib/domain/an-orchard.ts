/** Small orchards for tests, drawn as people draw them. */

import { step } from '@/lib/domain/orchard/distance'
import type { Block, Position, Tree } from '@/lib/domain/orchard/types'

export const someField: Position = { lat: 47.2, lon: 0.5 }

export function aTree(tree: Partial<Tree> & Pick<Tree, 'no'>): Tree {
  return {
    block: 1,
    row: 1,
    place: tree.no,
    species: 'apple',
    cultivar: null,
    sizeClass: 'medium',
    plantedYear: null,
    heightCm: null,
    trunkCm: null,
    asksSaw: false,
    life: 'standing',
    position: null,
    ...tree,
  }
}

export function aBlock(block: Partial<Block> = {}): Block {
  return {
    no: 1,
    code: 'S',
    name: 'South',
    rowSpacingM: 4,
    treeSpacingM: 4,
    bearingDeg: 0,
    firstTree: someField,
    taggedEnd: 'low',
    ...block,
  }
}

/** Each string is a row: T a tree, D a dead one, R removed, a dot a gap, a blank no place at all. */
export function treesOf(rows: readonly string[], block = aBlock(), firstNo = 1): Tree[] {
  const lives = { T: 'standing', D: 'dead', R: 'removed', '.': 'gap' } as const
  const places = rows.flatMap((row, rowIndex) =>
    [...row].flatMap((sign, placeIndex) => {
      const life = lives[sign as keyof typeof lives]
      return life ? [{ row: rowIndex + 1, place: placeIndex + 1, life }] : []
    })
  )
  return places.map((place, index) => aTree({ no: firstNo + index, block: block.no, ...place }))
}

/** The same trees, with the positions a surveyor would have found on a perfect grid. */
export function surveyed(trees: readonly Tree[], block: Block): Tree[] {
  const bearing = block.bearingDeg ?? 0
  const first = block.firstTree ?? someField
  return trees.map((tree) => {
    const alongRow = step(first, bearing, (tree.place - 1) * block.treeSpacingM)
    return { ...tree, position: step(alongRow, bearing + 90, (tree.row - 1) * block.rowSpacingM) }
  })
}
