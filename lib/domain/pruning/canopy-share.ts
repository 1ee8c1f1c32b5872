/** How much of a tree may go in one year. Two rules: what suits an apple does not suit a peach. */

import type { Species } from '../orchard/types'
import { type Fact, secondHand } from './fact'

export type YearsLimit = Fact<number> & { of: 'crown' | 'last_years_wood' }

const crown: YearsLimit = {
  ...secondHand(0.25, 'ansi_a300'),
  of: 'crown',
}

/** Peaches and nectarines bear on last year's shoots alone, so that these are made new every year. */
const lastYearsWood: YearsLimit = {
  ...secondHand(0.5, 'garden_references'),
  of: 'last_years_wood',
}

export function yearsLimit(species: Species): YearsLimit {
  return bearsOnShootsAlone(species) ? lastYearsWood : crown
}

export function bearsOnShootsAlone(species: Species): boolean {
  return species === 'peach' || species === 'nectarine'
}

/** More than a year's share is planned: a warning, and the lead's to weigh. */
export function isTooMuch(species: Species, share: number): boolean {
  return share > yearsLimit(species).value
}
