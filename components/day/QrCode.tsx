'use client'

import { encode } from 'uqr'

import './qr.css'

type QrCodeProps = {
  text: string
  label: string
  /** On paper a part of it gets dirty: so much more of it may be lost. */
  isPrinted?: boolean
}

/** A code to scan: always dark on white with its quiet margin, whatever the theme, or cameras miss it. */
export function QrCode({ text, label, isPrinted = false }: QrCodeProps) {
  const { data, size } = encode(text, { border: 4, ecc: isPrinted ? 'M' : 'L' })
  const dark = data.flatMap((row, y) =>
    runsOf(row).map(([x, long]) => `M${x} ${y}h${long}v1h-${long}Z`)
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

/** Where dark squares begin and how many stand side by side: a sheet of labels has thousands. */
function runsOf(row: readonly boolean[]): [start: number, long: number][] {
  const runs: [number, number][] = []
  for (const [x, isDark] of row.entries()) {
    const last = runs.at(-1)
    if (!isDark) continue
    if (last && last[0] + last[1] === x) last[1] += 1
    else runs.push([x, 1])
  }
  return runs
}
