/** Has this device keep the app as it is open now, so that it opens without signal. */

import { isFile } from './whose'

/** Where it cannot be kept (over plain http, in development) nothing happens: it then opens with signal only. */
export async function keepApp(): Promise<void> {
  if (process.env.NODE_ENV !== 'production' || !('serviceWorker' in navigator)) return
  // A proxy may keep the worker's file for a year, since it lies among files that never change.
  await navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' })
  const { active } = await navigator.serviceWorker.ready
  active?.postMessage({ files: filesOfPage() })
}

function filesOfPage(): string[] {
  const paths = performance
    .getEntriesByType('resource')
    .map(({ name }) => new URL(name))
    .flatMap(({ origin, pathname }) => (origin === location.origin ? [pathname] : []))
  return [...new Set(paths.filter(isFile))]
}
