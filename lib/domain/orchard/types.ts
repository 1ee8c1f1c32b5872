/** The orchard as it stands: blocks, rows of places, and the trees in them. */

/** A plum or cherry of which nobody said more is `plum` or `cherry`; the latter is taken for a sweet one. */
export const species = [
  'apple',
  'pear',
  'plum',
  'european_plum',
  'japanese_plum',
  'apricot',
  'peach',
  'nectarine',
  'cherry',
  'sour_cherry',
  'quince',
  'walnut',
  'fig',
  'persimmon',
  'almond',
  'pomegranate',
  'other',
] as const
export type Species = (typeof species)[number]

/** Degrees on the WGS84 ellipsoid. */
export type Position = { lat: number; lon: number }

export const lives = ['standing', 'dead', 'removed', 'gap'] as const
/** A gap is a place that holds no tree; removed says that one stood there. */
export type Life = (typeof lives)[number]

export const sizeClasses = ['young', 'small', 'medium', 'large'] as const
export type SizeClass = (typeof sizeClasses)[number]

export type Tree = {
  no: number
  /** The `no` of its block. */
  block: number
  row: number
  place: number
  species: Species
  /** The `no` of its cultivar. */
  cultivar: number | null
  sizeClass: SizeClass | null
  plantedYear: number | null
  heightCm: number | null
  /** Trunk diameter. */
  trunkCm: number | null
  asksSaw: boolean
  life: Life
  position: Position | null
}

export type Block = {
  no: number
  /** The letter or letters on the plate. */
  code: string
  name: string
  rowSpacingM: number
  treeSpacingM: number
  /** Compass bearing of a walk from place 1 upwards; row 2 lies to the right of row 1. */
  bearingDeg: number | null
  /** Where row 1, place 1 is. */
  firstTree: Position | null
  /** The end of the rows that carries the tags: where place numbers are low, or high. */
  taggedEnd: 'low' | 'high'
}

export const habits = ['spur', 'shoot', 'both', 'unknown'] as const
/** Where a cultivar carries its fruit buds: on spurs, on last year's shoots, on both. */
export type Habit = (typeof habits)[number]

export const budSites = ['base', 'middle', 'tip', 'unknown'] as const
/** Where along last year's shoots most fruit buds sit; shortening a shoot hangs on it. */
export type BudSite = (typeof budSites)[number]

export type Cultivar = { no: number; species: Species; name: string; habit: Habit; buds: BudSite }

/** Wood that can be seen from the alley: a dead tree still counts when one counts trees. */
export function stands(tree: Pick<Tree, 'life'>): boolean {
  return tree.life === 'standing' || tree.life === 'dead'
}
