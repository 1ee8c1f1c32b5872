import type { Look } from '@/lib/domain/orchard/status'
import type { Block, Tree } from '@/lib/domain/orchard/types'

/** What the map says, in the reader's language; the screen makes it from lib/text. */
export type MapWords = {
  /** What the map is, and that arrows and Enter work on it. */
  label: string
  zoomIn: string
  zoomOut: string
  /** At a block without positions: "not surveyed: a list, not a place". */
  notSurveyed: string
  /** A tree with its status, as it is spoken: "South, row 7, tree 14, plum, done". */
  tree: (tree: Tree, look: Look | undefined) => string
  /** "Row 7, 18 trees". */
  row: (block: Block, row: number, trees: number) => string
}

export type MapProps = {
  trees: readonly Tree[]
  blocks: readonly Block[]
  /** By the number of the tree. Keep a look's identity while it does not change. */
  looks: ReadonlyMap<number, Look>
  selected?: ReadonlySet<number>
  /** The next tree: it steps forward from its row, and the map begins there. */
  called?: number | null
  /** The compass bearing that points up the screen. */
  upDeg?: number
  words: MapWords
  onTap: (tree: Tree) => void
  onTapRow?: (block: number, row: number) => void
}
