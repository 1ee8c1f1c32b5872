/** What several drawings of the briefing stand on: earth, trees, and black figures for scale. */

import type { ReactNode } from 'react'

import { bowl } from '../../tree/drawings/trees'
import { Shoots, Wood } from '../../tree/drawings/Wood'
import type { IconName } from '../../ui/Icon'

type Place = { x: number; y: number; scale?: number }

export const earthY = 150

export function Earth({ children }: { children?: ReactNode }) {
  return (
    <>
      <path d="M0 150H358V176H0Z" fill="var(--soil)" />
      {children}
    </>
  )
}

const tree = bowl({ x: 0, y: 0 })

export function Tree({ x, y, scale = 0.52 }: Place) {
  return (
    <g transform={`translate(${x} ${y}) scale(${scale})`}>
      <Wood limbs={tree.back} lit />
      <Shoots limbs={[...tree.back, ...tree.front]} count={4} length={22} />
      <Wood limbs={[tree.trunk, ...tree.front, ...tree.side]} />
    </g>
  )
}

/** Stands with the feet at x, y. `arm` reaches to the right. */
export function Person({ x, y, scale = 1, arm = false }: Place & { arm?: boolean }) {
  return (
    <g transform={`translate(${x} ${y}) scale(${scale})`} fill="var(--ink)">
      <circle cy="-41" r="5" />
      <path d="M-5-34H5L7-18H4L3 0H.5L0-14-.5 0H-3L-4-18H-7Z" />
      {arm && <path d="M3-32 20-38" stroke="var(--ink)" strokeWidth="4" />}
    </g>
  )
}

/** One of the icons in the page, large. */
export function Big({
  name,
  x,
  y,
  size = 64,
}: {
  name: IconName
  x: number
  y: number
  size?: number
}) {
  return (
    <svg
      className="ic"
      x={x}
      y={y}
      width={size}
      height={size}
      viewBox="0 0 24 24"
      aria-hidden="true"
    >
      <use href={`#i-${name}`} />
    </svg>
  )
}

/** What is dangerous, or must not be. */
export function Danger({ d, dashed = false }: { d: string; dashed?: boolean }) {
  return (
    <path
      d={d}
      fill="none"
      stroke="var(--goes)"
      strokeWidth="3.5"
      strokeDasharray={dashed ? '7 5' : undefined}
    />
  )
}

/** Ground on which nobody works. */
export function ClosedGround({ x, width, top = 14 }: { x: number; width: number; top?: number }) {
  return (
    <>
      <defs>
        <pattern
          id="closed-ground"
          width="14"
          height="14"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V14" stroke="var(--goes)" strokeWidth="9" opacity="0.42" />
        </pattern>
      </defs>
      <rect x={x} y={top} width={width} height={150 - top} fill="url(#closed-ground)" />
      <Danger dashed d={`M${x} ${top}V150M${x + width} ${top}V150`} />
    </>
  )
}
