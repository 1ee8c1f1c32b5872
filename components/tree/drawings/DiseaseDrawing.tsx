import type { ReactNode } from 'react'

import type { DiseaseSign } from '../flag-words'
import { limb } from './limb'
import { Shoots, Wood } from './Wood'

type Drawn = Exclude<DiseaseSign, 'other'>

/** One sign each on a piece of wood; the sign itself in the colour of disease. */
export function DiseaseDrawing({ sign }: { sign: Drawn }) {
  return (
    <svg className="art" viewBox="0 0 150 92" aria-hidden="true">
      {drawings[sign]()}
    </svg>
  )
}

const stem = limb({ x: 62, y: 92 }, { angle: 4, length: 92, width: [34, 24] })
const sideBranch = limb({ x: 66, y: 46 }, { angle: 56, length: 74, turn: -12, width: [14, 5] })

const spotted = limb({ x: 0, y: 84 }, { angle: 66, length: 152, turn: 4, width: [26, 12] })

const drawings: Record<Drawn, () => ReactNode> = {
  gum: () => (
    <>
      <Wood limbs={[stem, sideBranch]} />
      <g fill="var(--sick)" stroke="var(--draw-paper, var(--paper))" strokeWidth="2.5">
        <path d="M58 30C64 38 66 46 66 54A7 7 0 0 1 52 54C52 46 54 38 58 30Z" />
        <path d="M74 52C78 58 80 63 80 69A5.5 5.5 0 0 1 69 69C69 63 71 58 74 52Z" />
      </g>
    </>
  ),
  canker: () => (
    <>
      <Wood limbs={[stem, sideBranch]} />
      <path
        d="M62 20C76 26 78 60 66 74C52 68 48 34 62 20Z"
        fill="var(--sick)"
        stroke="var(--wood-lit)"
        strokeWidth="4"
      />
      <path
        d="M62 32C68 38 69 54 65 62"
        fill="none"
        stroke="var(--draw-paper, var(--paper))"
        strokeWidth="2.5"
      />
    </>
  ),
  dead_twigs: () => {
    const branch = limb({ x: 4, y: 80 }, { angle: 74, length: 146, turn: -8, width: [16, 6] })
    const dead = [0.3, 0.55, 0.8].map((share, at) =>
      limb(
        { x: 4 + 140 * share, y: 80 - 44 * share },
        { angle: 14 + at * 8, length: 46 - at * 6, turn: at % 2 ? 24 : -20, width: [5, 2.5] }
      )
    )
    return (
      <>
        <Shoots limbs={[branch]} count={6} length={20} from={0.1} />
        <Wood limbs={[branch]} />
        <Twigs limbs={dead} />
      </>
    )
  },
  spots: () => (
    <>
      <Shoots limbs={[spotted]} count={5} length={26} from={0.3} />
      <Wood limbs={[spotted]} />
      <g fill="var(--sick)" stroke="var(--draw-paper, var(--paper))" strokeWidth="2.5">
        <circle cx="30" cy="73" r="8" />
        <circle cx="58" cy="60" r="6" />
        <circle cx="80" cy="56" r="8" />
        <circle cx="106" cy="43" r="6" />
        <circle cx="126" cy="39" r="5" />
      </g>
    </>
  ),
}

function Twigs({ limbs }: { limbs: Parameters<typeof Wood>[0]['limbs'] }) {
  return (
    <path
      d={limbs
        .map(({ from, bend, to }) => `M${from.x} ${from.y}Q${bend.x} ${bend.y} ${to.x} ${to.y}`)
        .join('')}
      fill="none"
      stroke="var(--sick)"
      strokeWidth="4.5"
      strokeLinecap="round"
    />
  )
}
