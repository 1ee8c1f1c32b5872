import type { ReactNode } from 'react'

import type { HazardSign } from '../flag-words'
import { type Limb, limb, outline } from './limb'
import { Wood } from './Wood'

type Drawn = Exclude<HazardSign, 'other'>

/** One danger each, seen from where one steps back to. What is dangerous is vermilion. */
export function HazardDrawing({ sign }: { sign: Drawn }) {
  return (
    <svg className="art" viewBox="0 0 150 92" aria-hidden="true">
      {sign !== 'leaning' && <path d="M0 88H150" stroke="var(--edge)" strokeWidth="2.5" />}
      {drawings[sign]()}
    </svg>
  )
}

const drawings: Record<Drawn, () => ReactNode> = {
  hanging_limb: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 58, y: 88 }, { angle: 0, length: 80, width: [15, 9] }),
          limb({ x: 58, y: 50 }, { angle: -52, length: 50, turn: 16, width: [9, 2] }),
          limb({ x: 59, y: 36 }, { angle: 58, length: 58, turn: 26, width: [9, 3] }),
        ]}
      />
      <Danger
        limbs={[
          limb({ x: 96, y: 17 }, { angle: 150, length: 58, turn: 30, width: [9, 3] }),
          limb({ x: 107, y: 46 }, { angle: 212, length: 32, turn: -10, width: [4, 2] }),
          limb({ x: 108, y: 50 }, { angle: 140, length: 28, turn: 12, width: [4, 2] }),
        ]}
      />
      <Line d="M88 13 94 18 90 22 98 27" />
    </>
  ),
  crack: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 75, y: 88 }, { angle: 0, length: 36, width: [24, 22] }),
          limb({ x: 73, y: 58 }, { angle: -38, length: 66, turn: -4, width: [17, 6] }),
          limb({ x: 77, y: 58 }, { angle: 38, length: 66, turn: 4, width: [17, 6] }),
        ]}
      />
      <path
        d="M76 42 72 52 78 58 73 66 79 73 75 82"
        fill="none"
        stroke="var(--draw-paper, var(--paper))"
        strokeWidth="8"
      />
      <Line d="M76 40 72 52 78 58 73 66 79 73 75 84" />
    </>
  ),
  power_line: () => (
    <>
      <path
        d="M0 14C40 24 110 24 150 12M0 24C40 34 110 34 150 22"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2.5"
      />
      <Wood
        limbs={[
          limb({ x: 68, y: 88 }, { angle: 0, length: 30, width: [14, 10] }),
          limb({ x: 67, y: 62 }, { angle: -46, length: 46, turn: 22, width: [8, 2] }),
          limb({ x: 68, y: 62 }, { angle: 0, length: 40, width: [7, 2] }),
          limb({ x: 69, y: 62 }, { angle: 42, length: 46, turn: -24, width: [8, 2] }),
        ]}
      />
      <Line d="M118 38 110 51H119L112 65" />
    </>
  ),
  too_high_or_thick: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 78, y: 88 }, { angle: 0, length: 58, width: [21, 13] }),
          limb({ x: 77, y: 42 }, { angle: -40, length: 50, turn: 14, width: [13, 5] }),
          limb({ x: 79, y: 42 }, { angle: 44, length: 52, turn: -6, width: [13, 5] }),
        ]}
      />
      <g transform="translate(28 70)" fill="var(--ink)">
        <circle cy="-9" r="4.5" />
        <path d="M-4.5-3h9l1 10h-2l-1 11h-5l-1-11h-2Z" />
      </g>
      <Line d="M130 88V8M124 15 130 7 136 15" />
    </>
  ),
  leaning: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 64, y: 92 }, { angle: 26, length: 42, width: [18, 12] }),
          limb({ x: 81, y: 58 }, { angle: -8, length: 48, turn: -4, width: [7, 2] }),
          limb({ x: 82, y: 57 }, { angle: 26, length: 46, turn: -4, width: [7, 2] }),
          limb({ x: 82, y: 58 }, { angle: 60, length: 48, turn: -10, width: [7, 2] }),
        ]}
      />
      <Line d="M0 88H36C44 88 46 72 58 72C66 72 66 84 74 88H150" />
    </>
  ),
  nest: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 36, y: 88 }, { angle: -2, length: 82, width: [15, 10] }),
          limb({ x: 36, y: 36 }, { angle: 64, length: 92, turn: 20, width: [9, 3] }),
        ]}
      />
      <path d="M84 20C70 30 68 58 84 66C100 58 100 30 86 20Z" fill="var(--goes)" />
      <path
        d="M73 36H97M72 46H98M76 56H94"
        stroke="var(--draw-paper, var(--paper))"
        strokeWidth="2.5"
      />
      <path
        d="M112 44h5M122 60h5M106 72h5M60 66h-5"
        stroke="var(--goes)"
        strokeWidth="4"
        strokeLinecap="round"
      />
    </>
  ),
}

function Danger({ limbs }: { limbs: readonly Limb[] }) {
  return <path fill="var(--goes)" d={limbs.map((one) => outline(one)).join('')} />
}

function Line({ d }: { d: string }) {
  return <path d={d} fill="none" stroke="var(--goes)" strokeWidth="3.5" />
}
