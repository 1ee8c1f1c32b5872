'use client'

import { useSelect } from '@/lib/hooks'

/** How many people wait for a lead to let them in. */
export function usePeopleWaiting(): number {
  return useSelect(
    ({ state }) => Object.values(state?.people ?? {}).filter((person) => !person.admitted).length
  )
}
