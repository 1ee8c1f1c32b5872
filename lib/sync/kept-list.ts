/** What this device keeps of what was asked for: on disk, in order, and the same on every page of the browser. */

import type { Bell, Kept, Storage } from './ports'

type KeptListParts = {
  storage: Storage
  bell: Bell
  owner: string
  /** Here or on another page: there is another list now. */
  changed: (items: readonly Kept[]) => void
}

export type KeptList = {
  items: () => readonly Kept[]
  /** As they are on disk. */
  reload: () => Promise<void>
  /** Resolves when it is on disk. */
  add: (fresh: Omit<Kept, 'seq'>) => Promise<void>
  change: (kept: Kept) => Promise<void>
  remove: (seqs: readonly number[]) => Promise<void>
  /** Made anew, at the end. */
  renew: (kept: Kept, fresh: Omit<Kept, 'seq'>) => Promise<void>
  close: () => void
}

export function openKeptList({ storage, bell, owner, changed }: KeptListParts): KeptList {
  let items: readonly Kept[] = []
  let writes = 0
  let closed = false
  const stopRinging = bell.onRing(() => void reload())

  return {
    items: () => items,
    reload,
    add,
    change: async (kept) => {
      await storage.change(kept)
      written(items.map((item) => (item.seq === kept.seq ? kept : item)))
    },
    remove: async (seqs) => {
      await storage.remove(seqs)
      written(items.filter(({ seq }) => !seqs.includes(seq)))
    },
    renew: async ({ seq }, fresh) => {
      await storage.remove([seq])
      items = items.filter((item) => item.seq !== seq)
      await add(fresh)
    },
    close: () => {
      closed = true
      stopRinging()
    },
  }

  /** What was written while reading makes it read again. */
  async function reload(): Promise<void> {
    let before: number
    let read: readonly Kept[]
    do {
      before = writes
      read = await storage.all(owner)
    } while (before !== writes)
    if (!closed) show(read)
  }

  async function add(fresh: Omit<Kept, 'seq'>): Promise<void> {
    const kept = await storage.add(fresh)
    // A page that was told by the bell may have read it already.
    written([...items.filter(({ seq }) => seq !== kept.seq), kept])
  }

  function written(next: readonly Kept[]): void {
    writes++
    show(next)
    bell.ring()
  }

  function show(next: readonly Kept[]): void {
    items = next
    changed(next)
  }
}
