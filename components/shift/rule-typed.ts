/** A house rule as it is read and typed, in the orchard's units. */

import type { HouseRule } from '@/lib/domain/safety/house-rules'
import { fractionOf } from '@/lib/text/us-lengths'

import { numberTyped } from '../tree/measure'

export type Units = 'metric' | 'us'
export type ShownUnit = Exclude<HouseRule['unit'], 'choice'> | 'in' | 'ft' | 'mph' | '°F'

/** A number of the rule is `shown * per + plus`. */
type Shown = { unit: ShownUnit; per: number; plus: number; digits: number }

export function shownIn({ unit, key }: HouseRule, units: Units): Shown {
  const whole = unit === 'month' || unit === 'choice' || unit === '°' || key.startsWith('three_cut')
  // What is chosen is never typed.
  const shown = unit === 'choice' ? 'min' : unit
  const asItIs: Shown = { unit: shown, per: 1, plus: 0, digits: whole ? 0 : 1 }
  if (units === 'metric') return asItIs
  switch (unit) {
    case 'cm':
      return { ...asItIs, ...inUsUnits(key) }
    case 'm':
      return { ...asItIs, unit: 'ft', per: 0.3048 }
    case 'km/h':
      return { ...asItIs, unit: 'mph', per: 1.609344 }
    case '°C':
      return { ...asItIs, unit: '°F', per: 1 / 1.8, plus: -32 / 1.8 }
    case 'month':
    case '°':
    case 'choice':
    case 'min':
    case 'h':
    case 'd':
      return asItIs
  }
}

/** A limb is measured in inches, a tree in feet. */
function inUsUnits(key: string): Pick<Shown, 'unit' | 'per' | 'digits'> {
  return inInches.includes(key)
    ? { unit: 'in', per: 2.54, digits: 2 }
    : { unit: 'ft', per: 30.48, digits: 1 }
}

const inInches = [
  'limb_cm',
  'pruner_cm',
  'lopper_cm',
  'pole_cm',
  'three_cut_out_cm',
  'three_cut_further_cm',
]

const roundings = { more: 'up', less: 'down', either: 'near' } as const

/** Rounded to the cautious side; inches in eighths, as a tape has them. */
export function asShown(rule: HouseRule, value: number, units: Units): string {
  const { unit, per, plus, digits } = shownIn(rule, units)
  if (unit === 'in')
    return fractionOf(value / per, 8, roundings[rule.cautious]).replace('\u00a0', ' ')
  return String(rounded((value - plus) / per, digits, rule.cautious))
}

/** In the rule's own unit. Null: no number, or out of its range. */
export function ruleTyped(rule: HouseRule, typed: string, units: Units): number | null {
  // Least and most as they are shown mean themselves.
  for (const end of [rule.least, rule.most])
    if (typed.trim().replace(',', '.') === asShown(rule, end, units)) return end
  const number = numberTyped(typed)
  if (typed.trim() === '' || !Number.isFinite(number)) return null
  const { per, plus, digits } = shownIn(rule, units)
  const value = rounded(number * per + plus, digits, rule.cautious)
  return value >= rule.least && value <= rule.most ? value : null
}

function rounded(value: number, digits: number, cautious: HouseRule['cautious']): number {
  const parts = 10 ** digits
  // What is exact stays, although it is no binary fraction.
  const near = Number((value * parts).toFixed(6))
  const round = { more: Math.ceil, less: Math.floor, either: Math.round }[cautious]
  return round(near) / parts
}
