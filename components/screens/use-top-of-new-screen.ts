'use client'

import { useEffect, useLayoutEffect, useRef } from 'react'

/** A screen that is opened begins at its top; on the way back the browser knows where one was. */
export function useTopOfNewScreen(address: string): void {
  const shown = useRef(address)
  const isWayBack = useRef(false)
  useEffect(() => {
    const goBack = () => {
      // A step inside a screen has the address of the screen.
      isWayBack.current = addressNow() !== shown.current
    }
    addEventListener('popstate', goBack)
    return () => removeEventListener('popstate', goBack)
  }, [])
  useLayoutEffect(() => {
    if (shown.current === address) return
    shown.current = address
    if (!isWayBack.current) scrollTo(0, 0)
    isWayBack.current = false
  }, [address])
}

/** As `Screens` writes it. */
function addressNow(): string {
  return `${location.pathname}?${new URLSearchParams(location.search)}`
}
