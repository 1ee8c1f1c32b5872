'use client'

import { type ReactNode, useEffect, useRef } from 'react'

/** Sticks above the bench, however high that is, for as long as what it stands in is on the screen. */
export function StaysAboveBench({ children }: { children: ReactNode }) {
  const element = useRef<HTMLDivElement>(null)

  useEffect(() => {
    const bench = document.querySelector<HTMLElement>('.bench')
    if (!bench) return
    const observer = new ResizeObserver(() => {
      const isStuck = getComputedStyle(bench).position === 'sticky'
      element.current?.style.setProperty('bottom', isStuck ? `${bench.offsetHeight}px` : '0')
    })
    observer.observe(bench)
    return () => observer.disconnect()
  }, [])

  return (
    <div ref={element} className="stays">
      {children}
    </div>
  )
}
