/** Which species are proposed as off for a day; a lead decides. */

import type { Species } from '../orchard/types'
import { type HouseRuleKey, houseRuleOf } from './house-rules'

/** 1 to 12. */
export type Month = number

/** The months a species may be pruned in; one that is not here may be pruned in all of them. */
export type DryMonths = Partial<Record<Species, readonly Month[]>>

/**
 * University of California IPM, Pest Management Guidelines Apricot (r5100911) and Cherry: July
 * and August, after harvest, since wounds made in wet months let Eutypa in. These are
 * California's months, and the usual ones of the house rules; an orchard with rainy summers or in the
 * south sets its own driest months after harvest.
 */
export function dryMonthsOf(houseRules: Readonly<Record<string, number>>): DryMonths {
  const from = (key: HouseRuleKey) => houseRuleOf(houseRules, key)
  const cherry = monthsBetween(from('cherry_from_month'), from('cherry_to_month'))
  return {
    apricot: monthsBetween(from('apricot_from_month'), from('apricot_to_month')),
    cherry,
    sour_cherry: cherry,
  }
}

/** Wounds of these let Eutypa and bacterial canker in when they get wet. */
export const proneSpecies: readonly string[] = ['apricot', 'cherry', 'sour_cherry']

/** Both ends count; 11 to 2 goes over the end of the year. */
export function monthsBetween(from: Month, to: Month): Month[] {
  const count = ((to - from + 12) % 12) + 1
  return Array.from({ length: count }, (_, index) => ((from - 1 + index) % 12) + 1)
}

export function proposedOff(month: Month, dryMonths: DryMonths = dryMonthsOf({})): Species[] {
  return (Object.entries(dryMonths) as [Species, readonly Month[]][])
    .filter(([, dry]) => !dry.includes(month))
    .map(([species]) => species)
}
