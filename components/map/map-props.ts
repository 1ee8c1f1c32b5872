import type { Corner } from '@/lib/domain/orchard/drawn-shape'
import type { Look, TreeLooks } from '@/lib/domain/orchard/status'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import type { Fix } from '@/lib/domain/orchard/where'
import type { Aerial } from '@/lib/map/paint-aerial'
import type { DiseaseShown } from '@/lib/map/paint-disease'
import type { Tiles } from './tiles-in-page'

export type { Aerial, DiseaseShown }

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

/** While trees are drawn around: what is drawn so far, in corners of the map's own plane. */
export type Drawing = {
  corners: readonly Corner[]
  /** A line or a tapped corner more, and the trees inside of all that is drawn then. */
  onStroke: (stroke: readonly Corner[], inside: readonly number[]) => void
}

export type MapProps = {
  trees: readonly Tree[]
  blocks: readonly Block[]
  /** Made from the one before, so that a change is found without looking at every tree. */
  looks: TreeLooks
  selected?: ReadonlySet<number>
  /** Filtered out: faint. */
  dimmed?: ReadonlySet<number>
  /** Trees at which people have been for long. */
  long?: ReadonlySet<number>
  /** Circles round trees that are a licensed arborist's. */
  keepOuts?: readonly { tree: number; metres: number }[]
  /** Sick trees, and those to look at round them. */
  disease?: DiseaseShown | null
  /** The orchard's own picture from above. */
  aerial?: Aerial | null
  /** Pictures of the ground from another server; the map must be as everybody knows it, north up. */
  tiles?: Tiles | null
  /** Where this device is, and the circle in which it is. */
  me?: Fix | null
  /** Empty places are shown, and tapped like trees. */
  hasGaps?: boolean
  drawing?: Drawing | null
  /** A tree that was searched for; each new object moves the map there. */
  lookAt?: { tree: number } | null
  /** The next tree: it steps forward from its row, and the map begins there. */
  called?: number | null
  /** The compass bearing that points up the screen. */
  upDeg?: number
  words: MapWords
  onTap: (tree: Tree) => void
  onTapRow?: (block: number, row: number) => void
}
