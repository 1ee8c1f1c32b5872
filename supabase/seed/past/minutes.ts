/**
 * How long a tree took somebody. Invented, but shaped like work: more wood takes longer, and of the same
 * trees most lie near the middle while a few take twice as long.
 */

import type { Species, Tree } from '@/lib/domain/orchard/types'
import type { Random } from '../random'

/** For a trunk of 20 cm. */
const usualMinutes: Partial<Record<Species, number>> = {
  apple: 21,
  pear: 19,
  european_plum: 17,
  japanese_plum: 18,
  peach: 20,
  nectarine: 19,
  quince: 15,
  fig: 12,
  persimmon: 14,
  almond: 18,
}
const usualTrunkCm = 20
const spread = 0.28

/** `pace`: 1 is usual, 1.2 takes a fifth longer. */
export function minutesFor(
  { species, trunkCm, asksSaw }: Pick<Tree, 'species' | 'trunkCm' | 'asksSaw'>,
  pace: number,
  random: Random
): number {
  const wood = ((trunkCm ?? usualTrunkCm) / usualTrunkCm) ** 0.7
  const usual = (usualMinutes[species] ?? 18) * wood * (asksSaw ? 1.2 : 1) * pace
  return Math.max(4, usual * Math.exp(spread * normal(random)))
}

/** By Box and Muller. */
function normal({ share }: Random): number {
  return Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share())
}
