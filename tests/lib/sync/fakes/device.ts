/** The storage, locks, bell and randomness of one browser, in memory. */

import type { Bell, Kept, Locks, Random, Storage } from '@/lib/sync/ports'

export function memoryStorage(): Storage {
  const commands = new Map<number, Kept>()
  const values = new Map<string, unknown>()
  let lastSeq = 0
  return {
    add: async (fresh) => {
      const kept = { ...fresh, seq: ++lastSeq }
      commands.set(kept.seq, kept)
      return kept
    },
    all: async (owner) => [...commands.values()].filter((kept) => kept.owner === owner),
    change: async (kept) => {
      if (commands.has(kept.seq)) commands.set(kept.seq, kept)
    },
    remove: async (seqs) => {
      for (const seq of seqs) commands.delete(seq)
    },
    read: async (key) => structuredClone(values.get(key)),
    write: async (key, value) => {
      values.set(key, structuredClone(value))
    },
    drop: async (key) => {
      values.delete(key)
    },
    lease: async (name, holder, nowMs, lengthMs) => {
      // Written below only.
      const held = values.get(name) as { holder: string; untilMs: number } | undefined
      const isMine = !held || held.holder === holder || held.untilMs <= nowMs
      if (isMine) values.set(name, { holder, untilMs: nowMs + lengthMs })
      return isMine
    },
  }
}

/** Pages in line: the first leads until it goes. */
export function memoryLocks(): Locks {
  const lines = new Map<string, (() => void)[]>()
  return {
    lead: (name, whileLeading, until) => {
      const line = lines.get(name) ?? []
      lines.set(name, line)
      const start = () => whileLeading(until)
      line.push(start)
      if (line[0] === start) start()
      until.addEventListener('abort', () => {
        const wasFirst = line[0] === start
        line.splice(line.indexOf(start), 1)
        if (wasFirst) line[0]?.()
      })
    },
  }
}

/** One bell a browser; each page has its own end of it. */
export function memoryBells(): () => Bell {
  const ends = new Set<{ runs: Set<() => void> }>()
  return () => {
    const own = { runs: new Set<() => void>() }
    ends.add(own)
    return {
      ring: () => {
        for (const end of ends) if (end !== own) for (const run of end.runs) run()
      },
      onRing: (run) => {
        own.runs.add(run)
        return () => own.runs.delete(run)
      },
      close: () => ends.delete(own),
    }
  }
}

/** Always the same, and never the same id twice. */
export function plainRandom(name: string): Random {
  let count = 0
  return {
    share: () => 0.5,
    id: () => {
      let number = ++count
      for (const letter of name) number = (number * 31 + letter.charCodeAt(0)) % 2 ** 40
      return `00000000-0000-4000-8000-${number.toString(16).padStart(12, '0')}`
    },
  }
}
