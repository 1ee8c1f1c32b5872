import { along, type Limb, limb } from './limb'
import { Goes, Wood } from './Wood'

const branch = limb({ x: 18, y: 150 }, { angle: 80, length: 322, turn: -8, width: [26, 12] })

/** A short shoot with its plump bud; old ones have branched again and again and hang. */
function young(share: number, side: 1 | -1): Limb {
  const foot = along(branch, share)
  return limb(foot, { angle: foot.angle - side * 80, length: 30, turn: side * 14, width: [7, 5] })
}

const youngOnes = [young(0.22, 1), young(0.5, 1), young(0.84, 1)]
const foot = along(branch, 0.66)
const old = limb(foot, { angle: foot.angle - 84, length: 44, turn: 24, width: [13, 9] })
const knobs = [
  limb(along(old, 0.5), { angle: -52, length: 34, turn: -34, width: [9, 6] }),
  limb(along(old, 0.95), { angle: -18, length: 32, turn: 30, width: [8, 5] }),
  limb(along(old, 0.8), { angle: 54, length: 36, turn: 46, width: [8, 5] }),
]
const hangingFoot = along(branch, 0.36)
const hanging = limb(hangingFoot, { angle: 150, length: 46, turn: 20, width: [12, 7] })

/** A limb with spurs: the old ones go, the young ones with their buds stay. */
export function SpursDrawing() {
  return (
    <>
      <Wood limbs={[branch, ...youngOnes]} />
      {youngOnes.map(({ to }) => (
        <circle key={to.x} cx={to.x} cy={to.y} r="7.5" fill="var(--shoot)" />
      ))}
      <Goes limbs={[old, hanging]} />
      <path
        d={knobs
          .map(({ from, bend, to }) => `M${from.x} ${from.y}Q${bend.x} ${bend.y} ${to.x} ${to.y}`)
          .join('')}
        fill="none"
        stroke="var(--goes)"
        strokeWidth="5"
        strokeLinecap="round"
      />
    </>
  )
}
