/**
 * One cut: which tool, how a heavy limb comes off in three, and whether what is cut back to can take over.
 * No published number says which tool takes how much; the limits are the orchard's.
 */

import { type Fact, practice, type Range, read, secondHand } from './fact'

export const handTools = ['pruner', 'lopper', 'saw'] as const
export type HandTool = (typeof handTools)[number]

/** `above`: not with both feet on the ground and the tool in both hands. */
export const reaches = ['within', 'above'] as const
export type Reach = (typeof reaches)[number]

export type CutLimits = {
  /** Live wood up to here is the hand pruner's. */
  prunerCm: number
  lopperCm: number
  poleCm: number
  /** Thicker is the arborist's. */
  limbCm: number
}

export type ToolFor =
  | { state: 'ours'; tool: HandTool | 'pole_pruner'; inThree: boolean }
  /** Too high for the ground and too much for a pole: from a ladder by who may, or the lead. */
  | { state: 'not_from_the_ground' }
  /** Not for volunteers: refer. */
  | { state: 'refer' }

/**
 * Dead wood is hard and dulls or springs a bypass blade, so that it is sawn: common practice, and general
 * references agree. What the lopper does not take comes off in three cuts. Above reach a pole pruner takes
 * thin live wood, and nothing else is cut from below.
 */
export function toolFor(
  { diameterCm, isDead, reach }: { diameterCm: number; isDead: boolean; reach: Reach },
  { prunerCm, lopperCm, poleCm, limbCm }: CutLimits
): ToolFor {
  if (diameterCm > limbCm) return { state: 'refer' }
  if (reach === 'above')
    return isDead || diameterCm > poleCm
      ? { state: 'not_from_the_ground' }
      : { state: 'ours', tool: 'pole_pruner', inThree: false }
  const inThree = diameterCm > lopperCm
  if (inThree || isDead) return { state: 'ours', tool: 'saw', inThree }
  return { state: 'ours', tool: diameterCm > prunerCm ? 'lopper' : 'pruner', inThree }
}

const inchCm = 2.54

/** How the three cuts are laid: from below, from above a little further out, and at the collar. */
export type ThreeCutRule = {
  /** Share of the thickness that is cut from below. */
  undercut: Range
  /** How far out from the trunk or parent limb. */
  outCm: Range
  /** How much further out the cut from above lies. */
  furtherCm: Range
}

/** A third through, which lies between the sources: less lets the bark tear, more pinches the blade. */
const undercutShare = 1 / 3

/** How far out is the orchard's own, since the sources differ. */
export type ThreeCutDistances = { outCm: number; furtherCm: number }

export function houseThreeCuts({ outCm, furtherCm }: ThreeCutDistances): Fact<ThreeCutRule> {
  return practice({
    undercut: { least: undercutShare, most: undercutShare },
    outCm: { least: outCm, most: outCm },
    furtherCm: { least: furtherCm, most: furtherCm },
  })
}

export const threeCutRules = {
  ucIpm: read<ThreeCutRule>(
    {
      undercut: { least: 1 / 4, most: 1 / 4 },
      outCm: { least: 12 * inchCm, most: 24 * inchCm },
      furtherCm: { least: 2 * inchCm, most: 2 * inchCm },
    },
    'uc_ipm_74109'
  ),
  scottsdale: read<ThreeCutRule>(
    {
      undercut: { least: 1 / 4, most: 1 / 4 },
      outCm: { least: 6 * inchCm, most: 12 * inchCm },
      furtherCm: { least: 0, most: 2 * inchCm },
    },
    'scottsdale'
  ),
  wisconsin: read<ThreeCutRule>(
    {
      undercut: { least: 1 / 2, most: 1 / 2 },
      outCm: { least: 6 * inchCm, most: 12 * inchCm },
      furtherCm: { least: 1 * inchCm, most: 1 * inchCm },
    },
    'wisconsin'
  ),
} satisfies Record<string, Fact<ThreeCutRule>>

export type ThreeCuts = { undercutDepthCm: Range; undercutAtCm: Range; topCutAtCm: Range }

/** Distances are measured from the collar, where the third cut goes. */
export function threeCuts(
  diameterCm: number,
  { undercut, outCm, furtherCm }: ThreeCutRule
): ThreeCuts {
  return {
    undercutDepthCm: { least: diameterCm * undercut.least, most: diameterCm * undercut.most },
    undercutAtCm: outCm,
    topCutAtCm: {
      least: outCm.least + furtherCm.least,
      most: outCm.most + furtherCm.most,
    },
  }
}

/** General references, second hand: a thinner side branch does not take over, and the end dies back. */
export const lateralShare: Fact<number> = secondHand(1 / 3, 'garden_references')

export function lateralTakesOver(sizes: { removedCm: number; lateralCm: number }): boolean {
  return sizes.lateralCm >= sizes.removedCm * lateralShare.value
}

/** Laterals thicker than this share of the leader become its rivals. */
export const leaderShare: Fact<number> = read(0.5, 'uc_anr_8502')

export function isRivalOfLeader(sizes: { lateralCm: number; leaderCm: number }): boolean {
  return sizes.lateralCm > sizes.leaderCm * leaderShare.value
}
