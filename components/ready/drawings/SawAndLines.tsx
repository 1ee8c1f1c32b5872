import { limb, outline } from '../../tree/drawings/limb'
import { Goes, Wood } from '../../tree/drawings/Wood'
import { ClosedGround, Danger, Earth, earthY, Person, Tree } from './scenery'

const trunk = limb({ x: 70, y: 176 }, { angle: 0, length: 176, width: [62, 50] })
const heavy = limb({ x: 88, y: 84 }, { angle: 82, length: 236, turn: -8, width: [34, 12] })

/** The share of the limb that stays. */
const collar = 0.12

/** Three cuts on a heavy limb: from below, from above further out, then the stub at the collar. */
export function SawDrawing() {
  return (
    <>
      <Goes limbs={[heavy]} cutAt={collar} />
      <path d={outline(heavy, 0, collar)} fill="var(--wood)" />
      <Wood limbs={[trunk]} />
      <Danger d="M176 92V78M208 52V72M114 60V100" />
      <Cut number={1} x={176} y={110} />
      <Cut number={2} x={208} y={34} />
      <Cut number={3} x={114} y={42} />
      <Person x={300} y={172} scale={0.9} />
      <Danger d="M286 118 314 172M314 118 286 172" />
    </>
  )
}

function Cut({ number, x, y }: { number: number; x: number; y: number }) {
  return (
    <>
      <circle cx={x} cy={y} r="13" fill="var(--paper)" stroke="var(--ink)" strokeWidth="2.5" />
      <text x={x} y={y + 5} textAnchor="middle">
        {number}
      </text>
    </>
  )
}

/** A tree for the arborist, and all within its reach. */
export function KeepOutDrawing() {
  return (
    <>
      <ClosedGround x={86} width={186} />
      <Earth />
      <Tree x={179} y={earthY} scale={0.7} />
      <Tree x={30} y={earthY} scale={0.42} />
      <Tree x={328} y={earthY} scale={0.42} />
      <svg x={160} y={14} width={38} height={38} viewBox="-8.5 -8.5 17 17" aria-hidden="true">
        <use href="#m-arborist" x="-8.5" y="-8.5" width="17" height="17" />
      </svg>
      <Person x={292} y={earthY} />
      <Person x={64} y={earthY} />
    </>
  )
}

/** A line over the rows: nobody works to either side of it. */
export function LineDrawing() {
  return (
    <>
      <ClosedGround x={34} width={164} top={26} />
      <Earth />
      <path d="M116 150V8M94 20H138" stroke="var(--ink)" strokeWidth="6" />
      <path
        d="M0 14C30 24 66 24 98 18M134 18C190 30 290 28 358 12"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <Tree x={72} y={earthY} scale={0.42} />
      <Tree x={160} y={earthY} scale={0.42} />
      <Tree x={258} y={earthY} scale={0.42} />
      <Tree x={328} y={earthY} scale={0.42} />
      <Person x={214} y={earthY} />
    </>
  )
}
