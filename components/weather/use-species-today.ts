'use client'

import { openShiftOf, useSelect } from '@/lib/hooks'

/** The species of the round that is worked in, or that comes next. */
export function useSpeciesToday(): readonly string[] {
  return useSelect((view) => {
    const round = openShiftOf(view)?.roundId ?? view.state?.workRoundId ?? ''
    return view.state?.rounds[round]?.species ?? []
  })
}
