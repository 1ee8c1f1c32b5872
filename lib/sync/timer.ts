/** One thing that is due; a new time takes the place of the old one. */

import type { Clock } from './ports'

export type Timer = { in: (ms: number, run: () => void) => void; off: () => void }

export function timerOf(clock: Clock): Timer {
  let callOff: (() => void) | null = null
  return {
    in: (ms, run) => {
      callOff?.()
      callOff = clock.after(ms, run)
    },
    off: () => {
      callOff?.()
      callOff = null
    },
  }
}
