/** Which species are proposed as off for a day; a lead decides. */

import type { Species } from '../orchard/types'

/** 1 to 12. */
export type Month = number

/** The months a species may be pruned in; one that is not here may be pruned in all of them. */
export type DryMonths = Partial<Record<Species, readonly Month[]>>

/**
 * University of California IPM, Pest Management Guidelines Apricot (r5100911) and Cherry: July
 * and August, after harvest, since wounds made in wet months let Eutypa in. These are
 * California's months; an orchard with rainy summers or in the south sets its own driest
 * months after harvest. Sour cherries are taken along with the sweet ones.
 */
export const californiaDryMonths: DryMonths = {
  apricot: [7, 8],
  cherry: [7, 8],
  sour_cherry: [7, 8],
}

export function proposedOff(month: Month, dryMonths: DryMonths = californiaDryMonths): Species[] {
  return (Object.entries(dryMonths) as [Species, readonly Month[]][])
    .filter(([, dry]) => !dry.includes(month))
    .map(([species]) => species)
}
