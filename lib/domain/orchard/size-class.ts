/** How big a tree is, from what was measured. */

import type { SizeClass, Tree } from './types'

/**
 * Bounds are common practice, no source: a trunk under 5 cm is in training, a person on the
 * ground works to about 3 m, and about 5 m is the most a standard tree is let grow to.
 */
export function sizeClassOf({
  heightCm,
  trunkCm,
}: Pick<Tree, 'heightCm' | 'trunkCm'>): SizeClass | null {
  if (trunkCm !== null && trunkCm < 5) return 'young'
  if (heightCm === null) return null
  if (heightCm <= 300) return 'small'
  return heightCm <= 500 ? 'medium' : 'large'
}
