/**
 * What shortening a shoot does: its length, the share of fruit buds that goes, and how the pull of the
 * crop on the limb falls when it rides further in.
 */

import type { BudSite } from '../orchard/types'

/** Fruit buds in each tenth of a shoot, from its base to its tip. */
export type BudCounts = readonly number[]

export const tenths = 10

/**
 * A shoot drawn for each word, in buds of a hundred: our own choice, no source. A lead who counts the buds
 * of a shoot puts their numbers in its place.
 */
export const usualBuds: Record<Exclude<BudSite, 'unknown'>, BudCounts> = {
  base: [22, 20, 17, 13, 10, 7, 5, 3, 2, 1],
  middle: [5, 10, 15, 18, 18, 15, 10, 5, 3, 1],
  tip: [1, 2, 4, 6, 9, 12, 14, 16, 18, 18],
}

/** Rounded up to a whole percent where it is shown: a loss is never made to look smaller. */
export function shareOfBudsLost(counts: BudCounts, taken: number): number {
  const all = sum(counts)
  if (all === 0) return 0
  const left = 1 - clamp(taken)
  const lost = counts.map((count, tenth) => count * shareBeyond(tenth, left))
  return sum(lost) / all
}

export type Shortened = {
  lengthLeftCm: number
  takenCm: number
  budsLost: number
  /** How much less the crop pulls at the limb's base. */
  pull: PullFalls
}

/**
 * At least: as much fruit as before, borne further in. At most: what sat on the lost buds is not there
 * either. What really comes lies between, since the fruit that stays grows larger.
 */
export type PullFalls = { atLeast: number; atMost: number }

export type ShootOnLimb = {
  counts: BudCounts
  shootCm: number
  /** How far out on its limb the shoot begins. */
  limbCm: number
}

export function shorten({ counts, shootCm, limbCm }: ShootOnLimb, taken: number): Shortened {
  const share = clamp(taken)
  const before = loadOn(counts, 0)
  const after = loadOn(counts, share)
  // Where nothing bears any more, nothing pulls.
  const moment = ({ load, reach }: Load) => load * (limbCm + reach * shootCm)
  const same = after.load === 0 ? 0 : moment({ load: before.load, reach: after.reach })
  const fallsTo = (pull: number) => (before.load === 0 ? 0 : 1 - pull / moment(before))
  return {
    lengthLeftCm: shootCm * (1 - share),
    takenCm: shootCm * share,
    budsLost: shareOfBudsLost(counts, share),
    pull: { atLeast: fallsTo(same), atMost: fallsTo(moment(after)) },
  }
}

/** `reach` is how far along the shoot the crop hangs, taken together. */
export type Load = { load: number; reach: number }

export function loadOn(counts: BudCounts, taken: number): Load {
  const left = 1 - taken
  const parts = counts.map((count, tenth) => {
    const stays = 1 - shareBeyond(tenth, left)
    const start = tenth / tenths
    return { load: count * stays, reach: start + stays / tenths / 2 }
  })
  const load = sum(parts.map((part) => part.load))
  const turning = sum(parts.map((part) => part.load * part.reach))
  return { load, reach: load === 0 ? 0 : turning / load }
}

/** How much of a tenth lies beyond the cut; buds are spread evenly within it. */
function shareBeyond(tenth: number, left: number): number {
  return clamp(tenth + 1 - left * tenths)
}

function clamp(share: number): number {
  return Math.min(1, Math.max(0, share))
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0)
}
