'use client'

import { type CutBelow, cleanAfter, cutBelow, woodOf } from '@/lib/domain/disease/sanitation'
import type { Tree } from '@/lib/domain/orchard/types'
import { cleaningPolicyOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'
import { useRoundKind } from './use-work-card'

export type Sanitation = {
  signs: readonly string[]
  below: CutBelow | null
  clean: ReturnType<typeof cleanAfter>
  wood: ReturnType<typeof woodOf>
}

/** What the disease flags on this tree ask of the hand and the blade; null where there is none. */
export function useSanitation({ no, species }: Tree): Sanitation | null {
  // Only a winter round finds the trees at rest; where nobody said, the longer distance counts.
  const growth = useRoundKind() === 'winter' ? 'dormant' : 'growing'
  const policy = useSelect((view) => cleaningPolicyOf(view.state?.orchard.houseRules ?? {}))
  const signs = useSelect((view) =>
    Object.values(view.state?.flags ?? {})
      .filter((flag) => flag.tree === no && flag.kind === 'disease')
      .map(({ sign }) => sign)
  )
  if (signs.length === 0) return null
  return {
    signs,
    below: cutBelow(signs, species, growth),
    clean: cleanAfter(policy, growth),
    wood: woodOf(signs, species),
  }
}
