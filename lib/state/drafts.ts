/** What somebody is in the middle of typing or photographing: on disk, since opening the camera can end the page. */

import type { Storage } from '@/lib/sync/ports'

export type Drafts = {
  read: (key: string) => Promise<unknown>
  write: (key: string, value: unknown) => Promise<void>
  drop: (key: string) => Promise<void>
}

export function draftsOf(storage: Storage, owner: string): Drafts {
  const keyOf = (key: string) => `draft|${owner}|${key}`
  return {
    read: (key) => storage.read(keyOf(key)),
    write: (key, value) => storage.write(keyOf(key), value),
    drop: (key) => storage.drop(keyOf(key)),
  }
}
