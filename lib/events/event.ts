/** What happened, as the referee tells it. */

import type { Instant } from './state'

/** An event without its number: also what a command is expected to do. */
export type Happening = {
  at: Instant
  commandId: string
  /** Whose work it is. */
  personId: string
  /** Who tapped. */
  byPersonId: string
  kind: string
  body: unknown
  /** Only for leads and managers, and the person concerned where the event says so. */
  leadBody?: unknown
}

/** `{n}` alone: something that is not for this person's ears. */
export type Event = { n: number } | ({ n: number } & Happening)

export function isHeard(event: Event): event is { n: number } & Happening {
  return 'kind' in event
}
