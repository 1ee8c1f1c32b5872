'use client'

import { type ComponentType, useEffect, useState } from 'react'

/**
 * Something that only some people see, fetched for them when it is wanted. What does not come, without signal,
 * is left out and asked for again: it never stands in the way of the screen. `load` is outside the component.
 */
export function useLater<Props>(isWanted: boolean, load: () => Promise<ComponentType<Props>>) {
  const [Found, setFound] = useState<ComponentType<Props> | null>(null)
  useEffect(() => {
    if (!isWanted || Found) return
    let isOver = false
    const fetchIt = () =>
      void load().then(
        (found) => isOver || setFound(() => found),
        () => {}
      )
    fetchIt()
    addEventListener('online', fetchIt)
    return () => {
      isOver = true
      removeEventListener('online', fetchIt)
    }
  }, [isWanted, load, Found])
  return Found
}
