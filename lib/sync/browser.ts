/** A browser's clock, randomness, locks and bell. */

import type { Bell, Clock, Locks, Random, Storage } from './ports'

export const browserClock: Clock = {
  now: () => Date.now(),
  after: (ms, run) => {
    const timer = setTimeout(run, ms)
    return () => clearTimeout(timer)
  },
}

export const browserRandom: Random = {
  share: () => Math.random(),
  // crypto.randomUUID is missing over plain http.
  id: () => uuidOf(crypto.getRandomValues(new Uint8Array(16))),
}

export function uuidOf(bytes: Uint8Array): string {
  const marked = Array.from(bytes, (byte, at) => {
    if (at === 6) return (byte & 0x0f) | 0x40
    return at === 8 ? (byte & 0x3f) | 0x80 : byte
  })
  const hex = marked.map((byte) => byte.toString(16).padStart(2, '0')).join('')
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5')
}

/** Web Locks where there are some (a secure context), else a lease in the storage. */
export function browserLocks(parts: { storage: Storage; clock: Clock; random: Random }): Locks {
  return typeof navigator !== 'undefined' && navigator.locks ? webLocks : leaseLocks(parts)
}

const webLocks: Locks = {
  lead: (name, whileLeading, until) => {
    const lead = () =>
      new Promise<void>((resolve) => {
        until.addEventListener('abort', () => resolve())
        whileLeading(until)
      })
    // Called off while it waits in line: that is not an error.
    navigator.locks.request(name, { signal: until }, lead).catch(() => {})
  },
}

const leaseMs = 6_000
const renewMs = 2_000

/** Two may lead for a moment when a page was asleep; the same command twice has one answer. */
export function leaseLocks({
  storage,
  clock,
  random,
}: {
  storage: Storage
  clock: Clock
  random: Random
}): Locks {
  return {
    lead: (name, whileLeading, until) => {
      const holder = random.id()
      let leading: AbortController | null = null
      let stop = () => {}
      until.addEventListener('abort', () => {
        stop()
        leading?.abort()
        if (leading) void storage.lease(name, holder, clock.now(), 0)
      })
      void renew()

      async function renew(): Promise<void> {
        const isMine = await storage.lease(name, holder, clock.now(), leaseMs).catch(() => false)
        if (until.aborted) return
        stop = clock.after(renewMs, () => void renew())
        if (isMine && !leading) {
          leading = new AbortController()
          whileLeading(leading.signal)
        } else if (!isMine && leading) {
          leading.abort()
          leading = null
        }
      }
    },
  }
}

export function browserBell(name: string): Bell {
  if (typeof BroadcastChannel === 'undefined') {
    return { ring: () => {}, onRing: () => () => {}, close: () => {} }
  }
  const channel = new BroadcastChannel(name)
  return {
    ring: () => channel.postMessage(null),
    onRing: (run) => {
      channel.addEventListener('message', run)
      return () => channel.removeEventListener('message', run)
    },
    close: () => channel.close(),
  }
}
