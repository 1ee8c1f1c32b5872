/** What became of something that a person asked for. */

import type { Accepted, FaultCode, NextTreeAnswer, Refusal } from '@/lib/events/answer'

export type Sent =
  /** On this device; goes out by itself. */
  | { state: 'kept'; id: string }
  | { state: 'accepted'; id: string; answer: Accepted }
  | { state: 'refused'; id: string; refused: Refusal[]; next: NextTreeAnswer | null }
  /** Asked for a while, and dropped: it is not done, as far as anybody knows. */
  | { state: 'no_answer'; id: string }
  | { state: 'failed'; id: string; fault: FaultCode; code: string | null }
