/** Whether so much of a shoot may go; and buds that a lead has counted. */

import type { BudSite } from '../orchard/types'
import { type Bearing, mayGo } from './last-years-wood'
import { type BudCounts, shareOfBudsLost, tenths } from './shorten'

export type ShootVerdict = 'may_go' | 'lead_says' | 'too_much' | 'refused'

/** Further than this is the lead's, also where a source lets more go. */
const halfOfShoot = 1 / 2

/** A hair more than what may go is still what may go: shares are typed in twelfths. */
const hair = 1e-9

export function verdictOf(bearing: Bearing, taken: number): ShootVerdict {
  const range = mayGo(bearing)
  if (range === null) return 'refused'
  if (taken > range.most + hair) return 'too_much'
  return taken > halfOfShoot + hair ? 'lead_says' : 'may_go'
}

/**
 * Where counted buds sit: our own bounds, on the cautious side. A quarter of them in the outer third, and
 * it counts as bearing to the tip.
 */
export function siteOf(counts: BudCounts): Exclude<BudSite, 'unknown'> {
  if (shareOfBudsLost(counts, 1 / 3) >= 1 / 4) return 'tip'
  return 1 - shareOfBudsLost(counts, 2 / 3) >= 1 / 2 ? 'base' : 'middle'
}

const mostInTenth = 20

/** "0 1 2 3 4 4 3 1 0 0"; null: not ten whole numbers within range, or no bud at all. */
export function readCounts(typed: string): BudCounts | null {
  const parts = typed.trim().split(/[\s,;]+/)
  const counts = parts.map((part) => (/^\d{1,2}$/.test(part) ? Number(part) : Number.NaN))
  const isRight = counts.length === tenths && counts.every((count) => count <= mostInTenth)
  return isRight && counts.some((count) => count > 0) ? counts : null
}
