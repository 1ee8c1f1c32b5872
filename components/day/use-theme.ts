'use client'

import { useSyncExternalStore } from 'react'

import { chooseTheme, chosenTheme, type Theme } from '../layout/device-choices'

const listeners = new Set<() => void>()

/** Light or dark as it was chosen on this device, and the way to choose. */
export function useTheme(): [Theme, (theme: Theme) => void] {
  const theme = useSyncExternalStore(subscribe, chosenTheme, (): Theme => 'device')
  return [
    theme,
    (wanted) => {
      chooseTheme(wanted)
      for (const changed of listeners) changed()
    },
  ]
}

function subscribe(changed: () => void): () => void {
  listeners.add(changed)
  return () => listeners.delete(changed)
}
