'use client'

import { useEffect } from 'react'

/** Links are plain; those to screens that are shown here do not ask the server, all others are the browser's. */
export function useLinksInPage(isShownHere: (path: string) => boolean): void {
  useEffect(() => {
    const follow = (event: MouseEvent) => {
      const link = linkUnder(event)
      if (link === null || !isShownHere(link.href)) return
      event.preventDefault()
      if (link.href !== location.href) history.pushState(null, '', link.href)
    }
    // On its way down, so that nothing below can keep it.
    addEventListener('click', follow, true)
    return () => removeEventListener('click', follow, true)
  }, [isShownHere])
}

/** A plain press on a link of ours. */
function linkUnder(event: MouseEvent): HTMLAnchorElement | null {
  const isPlain =
    event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey
  if (!isPlain || !(event.target instanceof Element)) return null
  const link = event.target.closest('a')
  return link?.origin === location.origin && link.target === '' ? link : null
}
