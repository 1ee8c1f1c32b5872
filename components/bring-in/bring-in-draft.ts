/** The file that is being brought in, and what was said of it so far. Both are kept until it is in. */

import type { Encoding } from '@/lib/domain/orchard/file-text'
import type { HazardSign } from '@/lib/domain/orchard/inventory-words'
import type { Match } from '@/lib/domain/orchard/match-columns'
import type { Species } from '@/lib/domain/orchard/types'
import type { TreePlace } from '@/lib/text/tree-name'

export type ChosenFile = { name: string; text: string; encoding: Encoding }

/** Where a block is, as it is typed. */
export type TypedPlace = {
  isFromFirstTree: boolean
  lat: string
  lon: string
  bearing: string
  rowSpacing: string
  treeSpacing: string
}
export const noPlace: TypedPlace = {
  isFromFirstTree: false,
  lat: '',
  lon: '',
  bearing: '',
  rowSpacing: '',
  treeSpacing: '',
}

export type KnownHazard = TreePlace & { sign: HazardSign; note: string | null }

/** What came in, until the manager has said what becomes of its hazards. */
export type BroughtIn = {
  trees: number
  changed: number
  leftOut: number
  hazards: KnownHazard[]
  flagged: number
}

export type Said = {
  /** Null: as it is proposed. */
  matching: Match[] | null
  species: Record<string, Species>
  onlyBlock: string
  codes: Record<string, string>
  places: Record<string, TypedPlace>
  /** Trees that are to change, by number. */
  ticked: number[]
  /** Lines that are wrong and stay outside. */
  leftOut: number[]
  done: BroughtIn | null
}
export const nothingSaid: Said = {
  matching: null,
  species: {},
  onlyBlock: 'A',
  codes: {},
  places: {},
  ticked: [],
  leftOut: [],
  done: null,
}
