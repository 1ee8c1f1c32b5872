/** The trees around one tree as on a plan, in metres from it. */

import { offsetFrom } from './distance'
import { type Block, stands, type Tree } from './types'

export type Around = {
  /** Measured: north is up. Else rows run up, from row and place alone. */
  northUp: boolean
  trees: readonly { tree: Tree; rightM: number; upM: number }[]
}

export function treesAround(
  middle: Tree,
  block: Block,
  trees: Iterable<Tree>,
  radiusM: number
): Around {
  const origin = middle.position
  const around = [...trees].flatMap((tree) => {
    if (tree.no === middle.no || !stands(tree)) return []
    const at = placeOf(tree)
    return at && Math.hypot(at.rightM, at.upM) <= radiusM ? [{ tree, ...at }] : []
  })
  return { northUp: origin !== null, trees: around }

  function placeOf(tree: Tree): { rightM: number; upM: number } | null {
    if (origin) {
      if (!tree.position) return null
      const { eastM, northM } = offsetFrom(origin, tree.position)
      return { rightM: eastM, upM: northM }
    }
    if (tree.block !== middle.block) return null
    return {
      rightM: (tree.row - middle.row) * block.rowSpacingM,
      upM: (tree.place - middle.place) * block.treeSpacingM,
    }
  }
}
