/** A house rule as it is read and typed, in the orchard's units. */

import type { HouseRule } from '@/lib/domain/safety/house-rules'

export type Units = 'metric' | 'us'
export type ShownUnit = 'cm' | 'm' | 'min' | 'in' | 'ft'

type Shown = { unit: ShownUnit; per: number; digits: number }

export function shownIn({ unit, key }: HouseRule, units: Units): Shown {
  // What is chosen is never typed.
  if (unit === 'choice') return { unit: 'min', per: 1, digits: 0 }
  if (units === 'metric' || unit === 'min') return { unit, per: 1, digits: 1 }
  // A limb is measured in inches, a tree in feet.
  if (key === 'limb_cm') return { unit: 'in', per: 2.54, digits: 1 }
  if (key === 'pruner_cm' || key === 'lopper_cm') return { unit: 'in', per: 2.54, digits: 2 }
  return { unit: 'ft', per: unit === 'cm' ? 30.48 : 0.3048, digits: 1 }
}

/** Rounded to the cautious side. */
export function asShown(rule: HouseRule, value: number, units: Units): string {
  const { per, digits } = shownIn(rule, units)
  return String(rounded(value / per, digits, rule.cautious))
}

/** In the rule's own unit. Null: no number, or out of its range. */
export function ruleTyped(rule: HouseRule, typed: string, units: Units): number | null {
  // Least and most as they are shown mean themselves.
  for (const end of [rule.least, rule.most])
    if (typed.trim() === asShown(rule, end, units)) return end
  const number = Number(typed.trim().replace(',', '.'))
  if (typed.trim() === '' || !Number.isFinite(number)) return null
  const { per, digits } = shownIn(rule, units)
  const value = rounded(number * per, digits, rule.cautious)
  return value >= rule.least && value <= rule.most ? value : null
}

function rounded(value: number, digits: number, cautious: HouseRule['cautious']): number {
  const parts = 10 ** digits
  // What is exact stays, although it is no binary fraction.
  const near = Number((value * parts).toFixed(6))
  const round = { more: Math.ceil, less: Math.floor, either: Math.round }[cautious]
  return round(near) / parts
}
