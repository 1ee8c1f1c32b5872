/**
 * What a green limb weighs: the stem as a frustum, green wood by its species, and more for the side branches.
 * A range, since published densities of one species differ by a third; whoever decides takes the heavy end.
 */

import type { Species } from '../orchard/types'
import { type Fact, practice, type Range, secondHand } from './fact'

/** Wood Handbook (USDA Forest Products Laboratory, FPL-GTR-282), chapter 4: basic gravity is of green volume. */
export function greenDensityKgM3(basicGravity: number, moisturePercent: number): number {
  return 1000 * basicGravity * (1 + moisturePercent / 100)
}

export function frustumM3(thickM: number, thinM: number, lengthM: number): number {
  return (Math.PI * lengthM * (thickM ** 2 + thickM * thinM + thinM ** 2)) / 12
}

const kgM3PerLbFt3 = 0.45359237 / 0.3048 ** 3

/** Logs as in "Safety for Tree Workers" (US National Park Service), and the heavier of another public list with bark. */
const logs = 'us_park_service'
const apple = secondHand(lbFt3(55, 76), logs)
const cherry = secondHand(lbFt3(45, 52), logs)
const walnut = secondHand(lbFt3(55, 63), logs)
/** Of plum, pear, apricot and peach nothing was found: from the lightest to the heaviest fruit wood that is printed. */
const unknown = practice(lbFt3(45, 76))

/** What is often reckoned with where nobody knows the wood: said beside the range, which decides. */
export const usualFruitWoodKgM3 = lbFt3(60, 60).most

/** Kilograms of a cubic metre, green. */
export function densityOf(species: Species): Fact<Range> {
  switch (species) {
    case 'apple':
      return apple
    case 'cherry':
      return cherry
    case 'walnut':
      return walnut
    default:
      return unknown
  }
}

/** What side branches add to the stem, times it. No source: 1.2 to 1.5 for a limb in leaf. */
export const sideBranches = {
  bare: practice({ least: 1, most: 1.2 }),
  leafy: practice({ least: 1.2, most: 1.5 }),
} as const satisfies Record<string, Fact<Range>>
export type SideBranches = keyof typeof sideBranches

export type LimbShape = {
  /** Where it would be cut. */
  thickCm: number
  /** At its outer end. */
  thinCm: number
  lengthM: number
  branches: SideBranches
}

export function limbKg(shape: LimbShape, species: Species): Range {
  const stemM3 = frustumM3(shape.thickCm / 100, shape.thinCm / 100, shape.lengthM)
  const { value: density } = densityOf(species)
  const { value: more } = sideBranches[shape.branches]
  return {
    least: stemM3 * density.least * more.least,
    most: stemM3 * density.most * more.most,
  }
}

function lbFt3(least: number, most: number): Range {
  return { least: least * kgM3PerLbFt3, most: most * kgM3PerLbFt3 }
}
