/** What to say when no answer came, in a sentence that says what to do. */

import type { Fault } from '@/lib/events/answer'
import type { DoorMessages } from './messages'

/** The server's own code is more exact than the kind of fault, where we have words for it. */
export function faultSentence(text: Pick<DoorMessages, 'errors'>, { fault, code }: Fault): string {
  const { errors } = text
  if (code === 'too_many') return errors.too_many
  if (code?.startsWith('no_such_')) return errors.gone
  return fault === 'unknown' ? errors.unknown(code ?? fault) : errors[fault]
}
