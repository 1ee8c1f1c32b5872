/** What to say when no answer came, in a sentence that says what to do. */

import type { Fault } from '@/lib/events/answer'
import type { DoorMessages } from './messages'

/** Codes that say more than the kind of fault: of the server, and of this device itself. */
const exactCodes = [
  'too_many',
  'not_admitted',
  'other_login',
  'not_kept',
  'not_understood',
  'command_id_used',
] as const

export function faultSentence(text: Pick<DoorMessages, 'errors'>, { fault, code }: Fault): string {
  const { errors } = text
  const exact = exactCodes.find((known) => known === code)
  if (exact) return errors[exact]
  if (code?.startsWith('no_such_')) return errors.gone
  return fault === 'unknown' ? errors.unknown(code ?? fault) : errors[fault]
}
