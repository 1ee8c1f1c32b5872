'use client'

import { useCallback, useEffect, useState } from 'react'

import { windowOf } from './tree-table'

/** A line is 3.5 rem high, as lead.css has it, so that large text has room. */
const lineRem = 3.5

/** Which of many lines of the same height are seen in a box that scrolls. */
export function useWindow(count: number) {
  const [box, setBox] = useState<HTMLDivElement | null>(null)
  const [seen, setSeen] = useState({ top: 0, height: 600 })
  const [linePx, setLinePx] = useState(56)

  const look = useCallback(() => {
    if (!box) return
    setSeen({ top: box.scrollTop, height: box.clientHeight })
    setLinePx(lineRem * Number.parseFloat(getComputedStyle(document.documentElement).fontSize))
  }, [box])

  useEffect(() => {
    if (!box) return
    const sizes = new ResizeObserver(look)
    sizes.observe(box)
    box.addEventListener('scroll', look, { passive: true })
    return () => {
      sizes.disconnect()
      box.removeEventListener('scroll', look)
    }
  }, [box, look])

  /** Scrolls just so far that a line is seen, with the head of the table above it. */
  const comeInto = useCallback(
    (line: number) => {
      if (!box) return
      const [top, bottom] = [line * linePx, (line + 2) * linePx]
      if (top < box.scrollTop) box.scrollTop = top
      if (bottom > box.scrollTop + box.clientHeight) box.scrollTop = bottom - box.clientHeight
      // Now, not at the scroll event: the next key must find this line already drawn.
      look()
    },
    [box, linePx, look]
  )

  return { scroller: setBox, linePx, comeInto, ...windowOf(seen, { count, linePx }) }
}
