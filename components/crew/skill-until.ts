/** How long a skill still holds. */

import type { DateOnly } from '@/lib/events/state'

export type SkillHolds = 'not_granted' | 'no_end' | 'holds' | 'ends_soon' | 'ran_out'

/** So long a lead has to renew it before somebody stands at a tree without it. */
const soonDays = 14

export function skillHolds(until: DateOnly | null | undefined, today: DateOnly): SkillHolds {
  if (until === undefined) return 'not_granted'
  if (until === null) return 'no_end'
  if (until < today) return 'ran_out'
  const days = (Date.parse(until) - Date.parse(today)) / (24 * 3_600_000)
  return days <= soonDays ? 'ends_soon' : 'holds'
}
