/** The emergency card, line by line. */

import { emergencyNumberIn } from '@/lib/domain/safety/emergency-number'
import type { Source } from '@/lib/domain/safety/source'
import { phoneNumbersIn } from './phone-numbers'

/** In the order in which a manager writes it. */
export const emergencyLines = [
  'number',
  'call',
  'where',
  'access',
  'hospital',
  'first_aid',
  'first_aider',
  'meeting_point',
] as const
export type EmergencyLine = (typeof emergencyLines)[number]

export type EmergencyCard = Readonly<Record<string, string>>

export function isUnwritten(card: EmergencyCard): boolean {
  return Object.values(card).every((line) => line.trim() === '')
}

/** `proposedBy`: nobody has written it; the time zone of the orchard says so. */
export type NumberToCall = { number: string; proposedBy: Source | null }

/** The emergency number first, then whoever else knows the place. */
export function numbersToCall(card: EmergencyCard, timeZone: string): NumberToCall[] {
  const written = phoneNumbersIn(`${card.number ?? ''} ; ${card.call ?? ''}`)
  const proposed = card.number?.trim() ? null : emergencyNumberIn(timeZone)
  const others = [...new Set(written)]
    .filter((number) => number !== proposed?.number)
    .map((number) => ({ number, proposedBy: null }))
  if (proposed === null) return others
  // Written among those to call, it is as good as written above.
  const isWritten = written.includes(proposed.number)
  return [{ number: proposed.number, proposedBy: isWritten ? null : proposed.source }, ...others]
}
