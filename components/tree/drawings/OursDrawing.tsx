import type { ReactNode } from 'react'

import type { TrunkSign, UnderSign } from '@/lib/domain/safety/five-questions'
import { limb } from './limb'
import { Wood } from './Wood'

type Drawn = 'thin' | 'thick' | 'ground' | 'ladder' | 'higher' | TrunkSign | UnderSign

/** What the questions after the first ask about. What makes it the arborist's is vermilion. */
export function OursDrawing({ of }: { of: Drawn }) {
  return (
    <svg className="art" viewBox="0 0 150 92" aria-hidden="true">
      <path d="M0 88H150" stroke="var(--edge)" strokeWidth="2.5" />
      {drawings[of]()}
    </svg>
  )
}

const drawings: Record<Drawn, () => ReactNode> = {
  thin: () => <Across width={11} colour="var(--ink)" />,
  thick: () => <Across width={27} colour="var(--goes)" />,

  ground: () => (
    <>
      <Tree />
      <Person x={38} y={80} />
      <path d="M44 66 58 50" stroke="var(--ink)" strokeWidth="4" />
    </>
  ),
  ladder: () => (
    <>
      <Tree />
      <path d="M24 88 46 30M50 88 46 30M29 76H49M33 64H48.5M38 52H47.5" {...inkLine} />
      <Person x={40} y={44} />
    </>
  ),
  higher: () => (
    <>
      <Tree />
      <Person x={88} y={24} colour="var(--goes)" />
      <Line d="M130 88V8M124 15 130 7 136 15" />
    </>
  ),

  hollow: () => (
    <>
      <Trunk />
      <ellipse cx="75" cy="50" rx="11" ry="20" fill="var(--goes)" />
      <ellipse cx="75" cy="52" rx="6" ry="14" fill="var(--draw-paper, var(--paper))" />
    </>
  ),
  conks: () => (
    <>
      <Trunk />
      <path
        d="M57 34H34C36 26 50 24 57 26ZM93 52h24c-2-9-16-11-24-9ZM58 76H30c3-10 18-12 28-10Z"
        fill="var(--goes)"
      />
    </>
  ),
  canker: () => (
    <>
      <Trunk />
      <path d="M64 20C54 40 56 62 66 78H92C84 60 84 40 90 20Z" fill="var(--goes)" />
      <path d="M72 26C66 44 68 58 74 72" {...paperLine} />
    </>
  ),
  metal: () => (
    <>
      <Trunk />
      <Line d="M0 40H58M92 40H150M0 62H56M94 62H150M20 34l8 12M28 34l-8 12M122 56l8 12M130 56l-8 12" />
    </>
  ),
  leaning_far: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 52, y: 90 }, { angle: 22, length: 62, width: [17, 11] }),
          limb({ x: 73, y: 38 }, { angle: -14, length: 34, width: [7, 2] }),
          limb({ x: 74, y: 37 }, { angle: 48, length: 40, width: [7, 2] }),
        ]}
      />
      <path d="M52 88V10" stroke="var(--ink)" strokeWidth="2" strokeDasharray="2 6" />
      <Line d="M54 24H76M69 18 77 24 69 30" />
    </>
  ),

  dead_tree: () => (
    <>
      <g transform="translate(-16 0)">
        <Bare />
      </g>
      <Person x={112} y={80} />
    </>
  ),
  dead_limb: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 40, y: 88 }, { angle: 0, length: 80, width: [15, 9] }),
          limb({ x: 39, y: 44 }, { angle: -46, length: 40, turn: 18, width: [8, 2] }),
        ]}
      />
      <path
        d="M42 34C66 30 84 22 104 24L102 29C84 28 66 38 42 44ZM84 27 94 12M74 32 82 46"
        fill="var(--goes)"
        stroke="var(--goes)"
        strokeWidth="2.5"
      />
      <Person x={100} y={80} />
    </>
  ),
  over_road_or_house: () => (
    <>
      <Wood
        limbs={[
          limb({ x: 28, y: 88 }, { angle: 0, length: 70, width: [15, 9] }),
          limb({ x: 28, y: 40 }, { angle: 62, length: 76, turn: 14, width: [9, 3] }),
        ]}
      />
      <path
        d="M84 88V60H132V88M76 62 108 38 140 62"
        fill="none"
        stroke="var(--goes)"
        strokeWidth="4"
      />
      <path d="M102 88V72H114V88" fill="none" stroke="var(--goes)" strokeWidth="3" />
    </>
  ),
}

const inkLine = { fill: 'none', stroke: 'var(--ink)', strokeWidth: 2.5 } as const
const paperLine = {
  fill: 'none',
  stroke: 'var(--draw-paper, var(--paper))',
  strokeWidth: 3,
} as const

/** A limb and the bar across it where it is measured. */
function Across({ width, colour }: { width: number; colour: string }) {
  return (
    <>
      <Wood
        limbs={[
          limb({ x: 22, y: 88 }, { angle: 0, length: 88, width: [26, 22] }),
          limb({ x: 26, y: 62 }, { angle: 64, length: 128, turn: 8, width: [width, width * 0.6] }),
        ]}
      />
      <path
        d={`M62 ${40 - width / 2 - 8}V${40 - width / 2 + 1}M62 ${44 + width / 2 + 8}V${44 + width / 2 - 1}`}
        stroke={colour}
        strokeWidth="5"
      />
    </>
  )
}

function Tree() {
  return (
    <Wood
      limbs={[
        limb({ x: 82, y: 88 }, { angle: 0, length: 34, width: [16, 11] }),
        limb({ x: 81, y: 60 }, { angle: -40, length: 58, turn: 22, width: [9, 2] }),
        limb({ x: 82, y: 60 }, { angle: 0, length: 52, width: [8, 2] }),
        limb({ x: 83, y: 60 }, { angle: 42, length: 56, turn: -20, width: [9, 2] }),
      ]}
    />
  )
}

function Trunk() {
  return (
    <Wood
      limbs={[
        limb({ x: 75, y: 90 }, { angle: 0, length: 64, width: [42, 32] }),
        limb({ x: 68, y: 34 }, { angle: -34, length: 44, width: [18, 12] }),
        limb({ x: 82, y: 34 }, { angle: 34, length: 44, width: [18, 12] }),
      ]}
    />
  )
}

function Bare() {
  return (
    <path
      d="M56 88 60 40 40 16 63 34 66 8 70 34 96 14 74 42 78 88Z"
      fill="var(--goes)"
      stroke="var(--goes)"
      strokeLinejoin="round"
    />
  )
}

function Person({ x, y, colour = 'var(--ink)' }: { x: number; y: number; colour?: string }) {
  return (
    <g transform={`translate(${x} ${y})`} fill={colour}>
      <circle cy="-19" r="4.5" />
      <path d="M-4.5-13h9l1 10h-2l-1 11h-5l-1-11h-2Z" />
    </g>
  )
}

function Line({ d }: { d: string }) {
  return <path d={d} fill="none" stroke="var(--goes)" strokeWidth="3.5" />
}
