/** The client of a real browser: its storage, clock, locks, and what wakes it. */

import { openBackend } from '@/lib/data/backend'
import { type BackendAddress, fetchLibrary } from '@/lib/data/client'
import { browserBell, browserClock, browserLocks, browserRandom } from '@/lib/sync/browser'
import { indexedDbStorage } from '@/lib/sync/indexed-db'

import { openRowcall, type Rowcall } from './rowcall'

/** Returns what closes it again. */
export function openBrowserRowcall(where: BackendAddress): Rowcall {
  const storage = indexedDbStorage()
  const device = { storage, clock: browserClock, random: browserRandom }
  const rowcall = openRowcall({
    ...device,
    locks: browserLocks(device),
    bellOf: (name) => browserBell(`rowcall|${name}`),
    backend: openBackend(where),
    inside: () => import('./inside'),
  })
  const wake = () => {
    if (document.visibilityState === 'visible') rowcall.retry()
    else rowcall.rest()
  }
  addEventListener('online', wake)
  // Whoever loses the signal is told at once, not after the silence of half a minute.
  addEventListener('offline', wake)
  document.addEventListener('visibilitychange', wake)
  return {
    ...rowcall,
    close: () => {
      removeEventListener('online', wake)
      removeEventListener('offline', wake)
      document.removeEventListener('visibilitychange', wake)
      rowcall.close()
    },
  }
}

/** What does not come now is asked for again when it is needed. */
export function fetchAhead(): void {
  fetchLibrary().catch(() => {})
}

/** As the root layout wrote it into the page. */
export function backendInPage(): BackendAddress {
  const written = document.getElementById('rowcall-backend')?.textContent
  const address: unknown = written ? JSON.parse(written) : null
  const said = typeof address === 'object' && address !== null ? address : {}
  return { url: textIn(said, 'url'), anonKey: textIn(said, 'anonKey') }
}

function textIn(said: object, key: string): string | null {
  const value: unknown = Reflect.get(said, key)
  return typeof value === 'string' && value !== '' ? value : null
}
