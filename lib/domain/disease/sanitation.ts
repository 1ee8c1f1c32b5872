/**
 * How far below the last sign infected wood is cut, by what it may be. A volunteer sees a sign and not a
 * disease, so that of all it may be in this species the longest distance is asked for.
 */

import type { Species } from '../orchard/types'
import type { TradeSource } from '../pruning/fact'

export const diseases = [
  'eutypa',
  'bacterial_canker',
  'fire_blight',
  'silver_leaf',
  'cytospora',
  'brown_rot',
] as const
export type Disease = (typeof diseases)[number]

export type DistanceCm = { least: number; most: number }

export type DiseaseFacts = {
  disease: Disease
  hosts: readonly Species[]
  /** What of it a person sees, as flags call it. */
  signs: readonly string[]
  /** Below the last sign; null where no source gives a number. */
  belowCm: { dormant: DistanceCm; growing: DistanceCm } | null
  source: TradeSource | null
  /** How its wood leaves the orchard. */
  wood: 'carry_away' | 'bag' | 'leave_no_pile'
}

const inchCm = 2.54
const anyTime = (least: number, most = least) => ({
  dormant: { least, most },
  growing: { least, most },
})

const plums = ['plum', 'european_plum', 'japanese_plum'] as const
const cherries = ['cherry', 'sour_cherry'] as const
const stoneFruit = ['apricot', 'peach', 'nectarine', 'almond', ...plums, ...cherries] as const

export const diseaseFacts: readonly DiseaseFacts[] = [
  {
    disease: 'eutypa',
    hosts: ['apricot', ...cherries],
    signs: ['canker', 'gum', 'dead_twigs'],
    belowCm: anyTime(12 * inchCm),
    source: 'uc_ipm_apricot',
    wood: 'leave_no_pile',
  },
  {
    disease: 'bacterial_canker',
    hosts: stoneFruit,
    signs: ['canker', 'gum', 'dead_twigs'],
    // Measured in sweet cherry: of 38 shoots cut 5 inches below the edge none had it any more.
    belowCm: anyTime(5 * inchCm),
    source: 'wsu_2025',
    wood: 'carry_away',
  },
  {
    disease: 'fire_blight',
    hosts: ['apple', 'pear', 'quince'],
    signs: ['canker', 'dead_twigs'],
    belowCm: {
      dormant: { least: 8 * inchCm, most: 12 * inchCm },
      growing: { least: 12 * inchCm, most: 18 * inchCm },
    },
    source: 'uc_ipm_wsu_fire_blight',
    wood: 'bag',
  },
  {
    disease: 'silver_leaf',
    hosts: [...plums, ...cherries, 'apricot', 'peach', 'nectarine', 'almond'],
    signs: ['dead_twigs'],
    belowCm: anyTime(4 * inchCm, 6 * inchCm),
    source: 'garden_press',
    wood: 'carry_away',
  },
  {
    disease: 'cytospora',
    hosts: stoneFruit,
    signs: ['canker', 'gum'],
    belowCm: null,
    source: null,
    wood: 'carry_away',
  },
  {
    disease: 'brown_rot',
    hosts: stoneFruit,
    signs: ['dead_twigs', 'gum', 'spots'],
    belowCm: null,
    source: null,
    wood: 'carry_away',
  },
]

/** What a sign may be in a species; nothing we know of is an empty list. */
export function mayBe(sign: string, species: Species): DiseaseFacts[] {
  return diseaseFacts.filter(({ hosts, signs }) => hosts.includes(species) && signs.includes(sign))
}

export type GrowthState = keyof NonNullable<DiseaseFacts['belowCm']>

export type CutBelow = {
  /** The longest of what it may be, to the far end of each range. */
  belowCm: number
  /** Which of them asks for it. */
  disease: Disease
  source: TradeSource | null
}

/** Null: no source gives a number for anything it may be. Then: into sound wood, and the lead is asked. */
export function cutBelow(
  signs: readonly string[],
  species: Species,
  growth: GrowthState
): CutBelow | null {
  return signs
    .flatMap((sign) => mayBe(sign, species))
    .flatMap(({ disease, belowCm, source }) =>
      belowCm === null ? [] : [{ disease, source, belowCm: belowCm[growth].most }]
    )
    .reduce<CutBelow | null>(
      (longest, one) => (longest !== null && longest.belowCm >= one.belowCm ? longest : one),
      null
    )
}

/** Where on a shoot the cut goes: measured from its tip, past the last sign. */
export function cutAtCm(lastSignCm: number, below: Pick<CutBelow, 'belowCm'>): number {
  return lastSignCm + below.belowCm
}

/** What is done with the wood: the most careful of all it may be. */
export function woodOf(signs: readonly string[], species: Species): DiseaseFacts['wood'] {
  const all = signs.flatMap((sign) => mayBe(sign, species)).map(({ wood }) => wood)
  return (['bag', 'leave_no_pile'] as const).find((wood) => all.includes(wood)) ?? 'carry_away'
}

export const cleaningPolicies = ['each_cut', 'when_growing', 'each_tree'] as const
/**
 * The sources differ. UC: whenever one cuts into infected wood. Illinois: that only in the growing season.
 * WSU: being quick matters more, so after the tree. After the tree the referee asks for it in any case.
 */
export type CleaningPolicy = (typeof cleaningPolicies)[number]

export function cleanAfter(policy: CleaningPolicy, growth: GrowthState): 'each_cut' | 'each_tree' {
  switch (policy) {
    case 'each_cut':
      return 'each_cut'
    case 'when_growing':
      return growth === 'growing' ? 'each_cut' : 'each_tree'
    case 'each_tree':
      return 'each_tree'
  }
}
