/**
 * What may be done with last year's shoots. Where the buds sit decides: general gardening references on
 * apricots, second hand, and common practice agree. What nobody wrote down is asked for, never guessed.
 */

import type { BudSite, Habit, Species } from '../orchard/types'
import type { Range } from './fact'
import { hasSpurs } from './species-facts'

export const shoots = [
  'outer_third',
  'outer_half',
  'never',
  'leave_short',
  'do_not_shorten',
  'leave_and_ask',
  'another_winter',
] as const

export type LastYearsWood =
  /** The buds sit in the middle, or on spurs: the outer third may go. */
  | 'outer_third'
  /** The buds sit near the base: about a half may go. */
  | 'outer_half'
  /** The buds sit at the tip, and the crop goes with it. */
  | 'never'
  /** The same of an apple; but one source lets its long shoots be cut to a bud. */
  | 'leave_short'
  /** The crop is on the shoots, nobody wrote down where: thin them, leave their tips. */
  | 'do_not_shorten'
  /** Nobody knows where this one bears. */
  | 'leave_and_ask'
  /** A neglected tree has lost enough this winter. */
  | 'another_winter'

export type Bearing = { species: Species; habit: Habit; buds: BudSite }

export function lastYearsWood({ species, habit, buds }: Bearing): LastYearsWood {
  if (species === 'apple' && buds === 'tip') return 'leave_short'
  if (buds !== 'unknown') return bySite[buds]
  return byHabit[habit === 'spur' && !hasSpurs(species) ? 'unknown' : habit]
}

const bySite: Record<Exclude<BudSite, 'unknown'>, LastYearsWood> = {
  base: 'outer_half',
  middle: 'outer_third',
  tip: 'never',
}

/** A shoot that grew on a spur bearer carries little; of `both` nobody said how much the shoots carry. */
const byHabit: Record<Habit, LastYearsWood> = {
  spur: 'outer_third',
  shoot: 'do_not_shorten',
  both: 'leave_and_ask',
  unknown: 'leave_and_ask',
}

/**
 * How much of a shoot may go; null: none of it. Two thirds were read for apricots with buds near the base;
 * other species keep to the half.
 */
export function mayGo({ species, ...bearing }: Bearing): Range | null {
  switch (lastYearsWood({ species, ...bearing })) {
    case 'outer_third':
      return { least: 0, most: 1 / 3 }
    case 'outer_half':
      return species === 'apricot' ? { least: 1 / 2, most: 2 / 3 } : { least: 1 / 3, most: 1 / 2 }
    case 'never':
    case 'leave_short':
    case 'do_not_shorten':
    case 'leave_and_ask':
    case 'another_winter':
      return null
  }
}

/** Heritage-orchard site, second hand, of apples that bear at the tip: "about 9 inches". */
export const longTipShootCm = 9 * 2.54

/**
 * One shoot of a tip bearer. A share of it never goes; of an apple one longer than nine inches may be cut to a
 * bud, and of any other species nobody says so.
 */
export function tipShoot(species: Species, lengthCm: number): 'leave' | 'may_cut' {
  return species === 'apple' && lengthCm > longTipShootCm ? 'may_cut' : 'leave'
}
