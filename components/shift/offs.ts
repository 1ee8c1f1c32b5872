/** What is not pruned today, and why. */

import { dryMonthsOf, proposedOff } from '@/lib/domain/safety/species-season'
import type { DateOnly, OffReason } from '@/lib/events/state'

/** A species, or 'ladder', and the reason. */
export type Offs = Record<string, OffReason>

/** What a lead may say. The season is the calendar's to say. */
export const offReasons: readonly OffReason[] = [
  'rain',
  'wet_wood',
  'wind',
  'thunder',
  'heat',
  'lead',
]

/** Of the round's species, those whose months it is not. A lead decides. */
export function proposedOffs(
  date: DateOnly,
  ofRound: readonly string[],
  houseRules: Readonly<Record<string, number>>
): Offs {
  const off: readonly string[] = proposedOff(Number(date.split('-')[1]), dryMonthsOf(houseRules))
  return Object.fromEntries(
    ofRound.filter((one) => off.includes(one)).map((one) => [one, 'season' as const])
  )
}

/** The usual reason for what is put off by hand: ladders for the wind, trees because a lead says so. */
export function usualReason(what: string): OffReason {
  return what === 'ladder' ? 'wind' : 'lead'
}
