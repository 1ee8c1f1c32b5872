'use client'

import { useSyncExternalStore } from 'react'

/** The code in the page's fragment; `null` while the page comes to life, '' where there is none. */
export function useCodeInLink(): string | null {
  return useSyncExternalStore(
    onChange,
    () => codeIn(location.hash),
    () => null
  )
}

/** Takes the code from a link or from what somebody typed: both are pasted. */
export function codeIn(text: string): string {
  return text.slice(text.lastIndexOf('#') + 1).trim()
}

/** The code has done its work: it shall not stay in the address bar or the history. */
export function forgetCode(): void {
  history.replaceState(history.state, '', location.pathname)
}

function onChange(changed: () => void): () => void {
  addEventListener('hashchange', changed)
  return () => removeEventListener('hashchange', changed)
}
