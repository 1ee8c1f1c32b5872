'use client'

import { useEffect, useState } from 'react'

type QrCodeProps = {
  text: string
  label: string
  isBig?: boolean
}

type Drawn = { size: number; path: string }

/** A code for a phone's camera. Dark on light in either theme: many cameras read nothing else. */
export function QrCode({ text, label, isBig = false }: QrCodeProps) {
  const [drawn, setDrawn] = useState<Drawn | null>(null)
  useEffect(() => {
    let isOver = false
    void draw(text).then((next) => isOver || setDrawn(next))
    return () => {
      isOver = true
    }
  }, [text])

  return (
    <svg
      className={isBig ? 'qr is-big' : 'qr'}
      viewBox={`0 0 ${drawn?.size ?? 1} ${drawn?.size ?? 1}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      {drawn && <path d={drawn.path} />}
    </svg>
  )
}

/** The encoder is fetched only where a code is shown. */
async function draw(text: string): Promise<Drawn> {
  const { encode } = await import('uqr')
  const { data, size } = encode(text, { ecc: 'M', border: 3 })
  const squares = data.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : []))
  )
  return { size, path: squares.join('') }
}
