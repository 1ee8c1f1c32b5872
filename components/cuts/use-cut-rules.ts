'use client'

/** What this orchard has set for cuts. */

import type { CutLimits, ThreeCutDistances } from '@/lib/domain/pruning/cut'
import { houseRuleOf } from '@/lib/domain/safety/house-rules'
import { useSelect } from '@/lib/hooks'

export function useCutLimits(): CutLimits {
  return useSelect((view) => {
    const set = view.state?.orchard.houseRules ?? {}
    return {
      prunerCm: houseRuleOf(set, 'pruner_cm'),
      lopperCm: houseRuleOf(set, 'lopper_cm'),
      poleCm: houseRuleOf(set, 'pole_cm'),
      limbCm: houseRuleOf(set, 'limb_cm'),
    }
  })
}

export function useThreeCutDistances(): ThreeCutDistances {
  return useSelect((view) => {
    const set = view.state?.orchard.houseRules ?? {}
    return {
      outCm: houseRuleOf(set, 'three_cut_out_cm'),
      furtherCm: houseRuleOf(set, 'three_cut_further_cm'),
    }
  })
}
