'use client'

import { useSyncExternalStore } from 'react'

/** The address by which this page was opened; null where it is not known, on the server. */
export function useOrigin(): string | null {
  return useSyncExternalStore(
    neverChanges,
    () => location.origin,
    () => null
  )
}

/** No other device reaches it. */
export function isOnlyHere(origin: string): boolean {
  return ['localhost', '127.0.0.1', '[::1]'].includes(new URL(origin).hostname)
}

function neverChanges(): () => void {
  return () => {}
}
