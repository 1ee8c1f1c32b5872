/**
 * The five questions that a phone asks about a tree that looks dangerous, and what the rules make of the
 * answers. A question that nobody answered leaves its rules unanswered; in one that was answered, what is not
 * ticked was looked for and is not there.
 */

import { type Answer, type Answers, shellShare } from './ours-or-the-arborists'
import { freeOfLineM, type NearLine } from './power-line'

/** The last two are no danger by themselves: the one asks further, the other says that somebody is not sure. */
export const seenSigns = [
  'hanging_limb',
  'crack',
  'power_line',
  'leaning',
  'nest',
  'too_high_or_thick',
  'other',
] as const
export type SeenSign = (typeof seenSigns)[number]

export const thicknesses = ['thin', 'thick', 'not_known'] as const
export const heights = ['ground', 'ladder', 'higher', 'not_known'] as const
export const trunkSigns = ['hollow', 'conks', 'canker', 'metal', 'leaning_far'] as const
export const underSigns = ['dead_tree', 'dead_limb', 'over_road_or_house'] as const
export type TrunkSign = (typeof trunkSigns)[number]
export type UnderSign = (typeof underSigns)[number]

/** Looked, and these were there; or could not tell. */
export type Looked<Sign> = readonly Sign[] | 'not_known'

export type Told = {
  seen: readonly SeenSign[]
  thickness: (typeof thicknesses)[number] | null
  /** Measured where it would be cut; decides over the picture. */
  limbCm: number | null
  height: (typeof heights)[number] | null
  trunk: Looked<TrunkSign> | null
  hollow: { trunkCm: number; soundCm: number } | null
  under: Looked<UnderSign> | null
  line: NearLine | null
}

export const nothingTold: Told = {
  seen: [],
  thickness: null,
  limbCm: null,
  height: null,
  trunk: null,
  hollow: null,
  under: null,
  line: null,
}

/** `feetCm`: how high a ladder is used here at most; where that is not at all, any ladder is too high. */
export function answersOf(told: Told, { feetCm }: { feetCm: number }): Answers {
  const { seen, thickness, limbCm, height, trunk, hollow, under, line } = told
  const atAll = (sign: SeenSign): Answer => (seen.includes(sign) ? 'yes' : 'no')
  return {
    ...(seen.length > 0 && {
      hanging_limb: atAll('hanging_limb'),
      crack: atAll('crack'),
      line_near: line ? Math.max(0, freeOfLineM(line)) : atAll('power_line'),
      leaning_fresh: atAll('leaning'),
      nest: atAll('nest'),
      something_else: atAll('other'),
    }),
    limb_thick: limbCm ?? byThickness[thickness ?? 'not_known'],
    too_high: height === 'ladder' && feetCm > 0 ? feetCm : byHeight[height ?? 'not_known'],
    ...(trunk !== null && {
      shell_thin: looked(trunk, 'hollow', hollow && shellShare(hollow.trunkCm, hollow.soundCm)),
      conks: looked(trunk, 'conks'),
      canker_wide: looked(trunk, 'canker'),
      metal_in_wood: looked(trunk, 'metal'),
      leaning_far: looked(trunk, 'leaning_far'),
    }),
    ...(under !== null && {
      dead_tree: looked(under, 'dead_tree'),
      dead_limb: looked(under, 'dead_limb'),
      over_road_or_house: looked(under, 'over_road_or_house'),
    }),
  }
}

const byThickness = { thin: 'no', thick: 'yes', not_known: 'not_known' } as const
const byHeight = { ground: 0, ladder: 'yes', higher: 'yes', not_known: 'not_known' } as const

function looked<Sign>(signs: Looked<Sign>, sign: Sign, measured: number | null = null): Answer {
  if (signs === 'not_known') return 'not_known'
  return signs.includes(sign) ? (measured ?? 'yes') : 'no'
}

/** What one sees first, gravest first: the flag is named after it. */
const gravest: readonly SeenSign[] = [
  'power_line',
  'hanging_limb',
  'crack',
  'leaning',
  'nest',
  'too_high_or_thick',
]

export function signOf(seen: readonly SeenSign[]): SeenSign {
  return gravest.find((sign) => seen.includes(sign)) ?? 'other'
}

/** Whether the pictures alone leave open whose it is, so that the other questions are worth asking. */
export function isOpen(seen: readonly SeenSign[]): boolean {
  return seen.length === 1 && seen[0] === 'too_high_or_thick'
}
