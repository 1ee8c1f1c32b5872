/** What became of something that a person asked for. */

import {
  type Accepted,
  type Answer,
  type FaultCode,
  isRefused,
  type NextTreeAnswer,
  type Outcome,
  type Refusal,
} from '@/lib/events/answer'

export type Sent =
  /** On this device; goes out by itself. */
  | { state: 'kept'; id: string }
  | { state: 'accepted'; id: string; answer: Accepted }
  | { state: 'refused'; id: string; refused: Refusal[]; next: NextTreeAnswer | null }
  /** Asked for a while, and dropped: it is not done, as far as anybody knows. */
  | { state: 'no_answer'; id: string }
  | { state: 'failed'; id: string; fault: FaultCode; code: string | null }

export function sentOf(id: string, outcome: Outcome<Answer>): Sent {
  if (!outcome.ok) {
    if (outcome.fault === 'offline' || outcome.fault === 'busy') return { state: 'no_answer', id }
    return { state: 'failed', id, fault: outcome.fault, code: outcome.code ?? null }
  }
  const answer = outcome.value
  if (!isRefused(answer)) return { state: 'accepted', id, answer }
  return { state: 'refused', id, refused: answer.refused, next: answer.next ?? null }
}
