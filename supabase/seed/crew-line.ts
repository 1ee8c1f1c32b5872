/** The whole line of a day's numbers, read as it grows: at the day's end there may be more than anybody may ask for at once. */

import type { Event } from '@/lib/events/event'

import type { CrewPhone } from './crew-phone'
import { eventsAfter } from './follow'

export type Line = {
  from: { head: number; epoch: string }
  readonly events: readonly Event[]
  /** Up to the referee's last number. */
  readOn: () => Promise<void>
}

export function lineFrom({ seat }: CrewPhone, from: Line['from']): Line {
  const events: Event[] = []
  return {
    from,
    events,
    async readOn() {
      for (;;) {
        const n = events.at(-1)?.n ?? from.head
        const told = await eventsAfter(seat, { epoch: from.epoch, n })
        if ('reset' in told) throw new Error('There were more events than a phone may ask for.')
        events.push(...told.events)
        if (told.events.length === 0 || (events.at(-1)?.n ?? 0) >= told.head) return
      }
    },
  }
}
