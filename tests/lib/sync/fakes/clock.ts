/** A clock that stands still until the test lets it run. */

import type { Clock } from '@/lib/sync/ports'

export type FakeClock = Clock & {
  /** Lets time pass: whatever falls due runs, in order. */
  pass: (ms: number) => Promise<void>
}

export function fakeClock(startMs = Date.parse('2027-01-16T09:00:00.000Z')): FakeClock {
  let nowMs = startMs
  let timers: { atMs: number; run: () => void }[] = []

  return {
    now: () => nowMs,
    after: (ms, run) => {
      const timer = { atMs: nowMs + ms, run }
      timers.push(timer)
      return () => {
        timers = timers.filter((other) => other !== timer)
      }
    },
    pass: async (ms) => {
      const untilMs = nowMs + ms
      await settled()
      for (let due = next(); due; due = next()) {
        nowMs = Math.max(nowMs, due.atMs)
        timers = timers.filter((timer) => timer !== due)
        due.run()
        await settled()
      }
      nowMs = untilMs

      function next() {
        const inTime = timers.filter(({ atMs }) => atMs <= untilMs)
        return inTime.toSorted((a, b) => a.atMs - b.atMs)[0]
      }
    },
  }
}

/** Until nothing more happens by itself, stores included. */
export async function settled(): Promise<void> {
  for (let turn = 0; turn < 12; turn++) await new Promise((resolve) => setImmediate(resolve))
}
