'use client'

import { useEffect } from 'react'

import { useDoorWords } from './Words'

/** The browser calls the page as its heading does, for whoever has several open or only hears their names. */
export function useTitle(): void {
  const { appName } = useDoorWords().common
  // After every change of the screen, since the heading may count what changed.
  useEffect(() => {
    const heading = document.querySelector('main h1')?.textContent
    document.title = heading ? `${heading} · ${appName}` : appName
  })
}
