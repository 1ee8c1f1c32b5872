'use client'

import { encode } from 'uqr'

import './qr.css'

type QrCodeProps = {
  text: string
  label: string
}

/** A code to scan: always dark on white with its quiet margin, whatever the theme, or cameras miss it. */
export function QrCode({ text, label }: QrCodeProps) {
  const { data, size } = encode(text, { border: 4 })
  const dark = data.flatMap((row, y) =>
    row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1Z`] : []))
  )
  return (
    <svg
      className="qr"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={label}
      shapeRendering="crispEdges"
    >
      <path d={`M0 0H${size}V${size}H0Z`} fill="#fff" />
      <path d={dark.join('')} fill="#000" />
    </svg>
  )
}
