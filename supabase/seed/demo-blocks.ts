/**
 * The three blocks of the demo orchard. All of it is invented: the name, the blocks, the trees
 * and the spot, a plain field with nothing on it. The cultivars exist.
 */

import type { BlockSettings } from '@/lib/domain/orchard/inventory-contents'
import type { BudSite, Habit, Position, Species } from '@/lib/domain/orchard/types'

/** What the inventory's table has no columns for. */
export const demoBlockSettings = {
  L: { rowSpacingM: 6, treeSpacingM: 4.5, bearingDeg: 348, taggedEnd: 'low' },
  W: { rowSpacingM: 6.5, treeSpacingM: 5, bearingDeg: 76, taggedEnd: 'high' },
  S: { rowSpacingM: 5, treeSpacingM: 4, bearingDeg: null, taggedEnd: 'low' },
} as const satisfies Record<string, BlockSettings>

export type DemoBlock = {
  code: keyof typeof demoBlockSettings
  name: string
  /** Where row 1, place 1 would be, or null for a block that nobody has surveyed. */
  corner: Position | null
  /** How far the rows bend out in their middle, in metres. */
  bendM: number
  /** Each row: first and last place, what it was planted with, and when. */
  rows: readonly DemoRow[]
  /** What was put in where the first tree failed. */
  strays: readonly Species[]
}

export type DemoRow = readonly [first: number, last: number, species: Species, planted: number]

export const demoBlocks: readonly DemoBlock[] = [
  {
    code: 'L',
    name: 'Long Bank',
    corner: { lat: 41.0512, lon: -97.9034 },
    bendM: 2.2,
    strays: ['japanese_plum', 'cherry', 'apricot', 'nectarine'],
    rows: [
      [5, 15, 'apricot', 1998],
      [4, 16, 'apricot', 1998],
      [3, 17, 'european_plum', 2001],
      [2, 17, 'european_plum', 2001],
      [2, 18, 'cherry', 2003],
      [1, 18, 'japanese_plum', 2001],
      [1, 18, 'peach', 2014],
      [1, 17, 'peach', 2014],
      [1, 16, 'nectarine', 2016],
      [2, 14, 'sour_cherry', 2008],
      [4, 11, 'cherry', 2008],
    ],
  },
  {
    code: 'W',
    name: 'Well Field',
    corner: { lat: 41.05085, lon: -97.9041 },
    bendM: 1.4,
    strays: ['pear', 'apple', 'quince', 'european_plum'],
    rows: [
      [1, 14, 'walnut', 1974],
      [1, 19, 'apple', 1982],
      [1, 20, 'apple', 1982],
      [2, 20, 'apple', 1990],
      [2, 21, 'pear', 1990],
      [3, 21, 'pear', 1995],
      [3, 20, 'apple', 2011],
      [5, 18, 'apple', 2011],
      [8, 15, 'quince', 2005],
    ],
  },
  {
    code: 'S',
    name: 'Shed Side',
    corner: null,
    bendM: 0,
    strays: ['fig', 'apple', 'persimmon'],
    rows: [
      [1, 12, 'fig', 2009],
      [1, 13, 'persimmon', 2009],
      [1, 13, 'almond', 2012],
      [2, 14, 'almond', 2012],
      [1, 14, 'apple', 2022],
      [1, 11, 'pear', 2023],
      [3, 10, 'european_plum', 2024],
    ],
  },
]

type DemoCultivar = readonly [name: string, habit: Habit, buds: BudSite]

/** Cultivars are facts; which wood carries their fruit buds, and where along it, is from memory, no source. */
export const demoCultivars: Record<Species, readonly DemoCultivar[]> = {
  apple: [
    ['Golden Delicious', 'spur', 'unknown'],
    ['Jonathan', 'both', 'middle'],
    ['Granny Smith', 'both', 'unknown'],
    ['Irish Peach', 'shoot', 'tip'],
  ],
  pear: [
    ['Bartlett', 'spur', 'unknown'],
    ['Beurré Bosc', 'spur', 'unknown'],
  ],
  plum: [],
  european_plum: [
    ['Stanley', 'spur', 'unknown'],
    ['Reine Claude de Bavay', 'spur', 'unknown'],
  ],
  japanese_plum: [['Santa Rosa', 'both', 'middle']],
  apricot: [
    ['Blenheim', 'both', 'middle'],
    ['Moorpark', 'both', 'middle'],
  ],
  peach: [
    ['Redhaven', 'shoot', 'middle'],
    ['Elberta', 'shoot', 'middle'],
  ],
  nectarine: [['Fantasia', 'shoot', 'middle']],
  cherry: [
    ['Bing', 'spur', 'base'],
    ['Lapins', 'spur', 'base'],
  ],
  sour_cherry: [['Montmorency', 'both', 'unknown']],
  quince: [['Smyrna', 'shoot', 'tip']],
  walnut: [['Franquette', 'shoot', 'tip']],
  fig: [['Brown Turkey', 'shoot', 'tip']],
  persimmon: [['Fuyu', 'shoot', 'tip']],
  almond: [['Nonpareil', 'both', 'unknown']],
  pomegranate: [],
  other: [],
}
