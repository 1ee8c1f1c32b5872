/** The storage of a browser. Everything is here before anything is sent. */

import { type DBSchema, openDB } from 'idb'

import type { Kept, Storage } from './ports'

interface Schema extends DBSchema {
  commands: { key: number; value: Kept; indexes: { owner: string } }
  /** Drafts, the last state and sheet, leases: single values by key. */
  values: { key: string; value: unknown }
}

type Lease = { holder: string; untilMs: number }

export function indexedDbStorage(name = 'rowcall'): Storage {
  const opening = openDB<Schema>(name, 1, {
    upgrade(database) {
      const commands = database.createObjectStore('commands', {
        keyPath: 'seq',
        autoIncrement: true,
      })
      commands.createIndex('owner', 'owner')
      database.createObjectStore('values')
    },
    // A page of a newer version waits for this one to let go.
    blocking: (_, __, event) => (event.target as IDBDatabase).close(),
  })

  return {
    add: async (fresh) => {
      const database = await opening
      const transaction = database.transaction('commands', 'readwrite', { durability: 'strict' })
      // The store makes the key.
      const seq = await transaction.store.add(fresh as Kept)
      await transaction.done
      return { ...fresh, seq }
    },
    all: async (owner) => (await opening).getAllFromIndex('commands', 'owner', owner),
    change: async (kept) => {
      const transaction = (await opening).transaction('commands', 'readwrite')
      if (await transaction.store.getKey(kept.seq)) await transaction.store.put(kept)
      await transaction.done
    },
    remove: async (seqs) => {
      const transaction = (await opening).transaction('commands', 'readwrite')
      await Promise.all(seqs.map((seq) => transaction.store.delete(seq)))
      await transaction.done
    },
    read: async (key) => (await opening).get('values', key),
    write: async (key, value) => {
      const transaction = (await opening).transaction('values', 'readwrite')
      transaction.store.put(value, key).catch(() => {})
      // A page that is going hears no answer any more, and what waits for one is undone.
      transaction.commit()
      await transaction.done
    },
    drop: async (key) => (await opening).delete('values', key),
    lease: async (lease, holder, nowMs, lengthMs) => {
      const transaction = (await opening).transaction('values', 'readwrite')
      // Only leases are written under this key.
      const held = (await transaction.store.get(`lease|${lease}`)) as Lease | undefined
      const isMine = !held || held.holder === holder || held.untilMs <= nowMs
      if (isMine)
        await transaction.store.put({ holder, untilMs: nowMs + lengthMs }, `lease|${lease}`)
      await transaction.done
      return isMine
    },
  }
}
