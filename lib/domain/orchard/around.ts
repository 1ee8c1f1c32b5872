/** The trees around one tree as on a plan, in metres from it. */

import { offsetFrom } from './distance'
import { type Placed, positionsOf } from './positions'
import { type Block, stands, type Tree } from './types'

export type Places = ReadonlyMap<number, Placed>

/** Where trees are on the earth: as measured, or reckoned in blocks whose corner and bearing are known. */
export function placesOf(trees: readonly Tree[], blocks: readonly Block[]): Places {
  const known = blocks.filter((block) => block.firstTree && block.bearingDeg !== null)
  const numbers = new Set(known.map(({ no }) => no))
  const reckoned = positionsOf(
    trees.filter(({ block }) => numbers.has(block)),
    known
  )
  const measured = trees.flatMap(({ no, position }) =>
    position ? [[no, { position, surveyed: true }] as const] : []
  )
  return new Map([...reckoned, ...measured])
}

export type Around = {
  /** Else rows run up, from row and place alone. */
  northUp: boolean
  trees: readonly { tree: Tree; rightM: number; upM: number }[]
}

type Ground = { block: Block; trees: Iterable<Tree>; places: Places }

export function treesAround(middle: Tree, ground: Ground, radiusM: number): Around {
  const { block, trees, places } = ground
  const origin = places.get(middle.no)?.position
  const around = [...trees].flatMap((tree) => {
    if (tree.no === middle.no || !stands(tree)) return []
    const at = placeOf(tree)
    return at && Math.hypot(at.rightM, at.upM) <= radiusM ? [{ tree, ...at }] : []
  })
  return { northUp: origin !== undefined, trees: around }

  function placeOf(tree: Tree): { rightM: number; upM: number } | null {
    if (origin) {
      const there = places.get(tree.no)
      if (!there) return null
      const { eastM, northM } = offsetFrom(origin, there.position)
      return { rightM: eastM, upM: northM }
    }
    if (tree.block !== middle.block) return null
    return {
      rightM: (tree.row - middle.row) * block.rowSpacingM,
      upM: (tree.place - middle.place) * block.treeSpacingM,
    }
  }
}
