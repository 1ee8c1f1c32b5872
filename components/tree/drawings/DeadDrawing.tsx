import { along, limb, outline } from './limb'
import { bowl } from './trees'
import { Goes, Ground, Shoots, Wood } from './Wood'

const tree = bowl({ x: 92, y: 190 })
const [, rightMain] = tree.front
const stay = tree.front.slice(0, 1)
const bareFoot = rightMain ? along(rightMain, 0.45) : tree.fork
const bare = [
  limb(bareFoot, { angle: 78, length: 60, turn: -14, width: [8, 2.5] }),
  limb(tree.fork, { angle: 8, length: 78, turn: 12, width: [9, 3] }),
]

const sound = limb({ x: 206, y: 176 }, { angle: 40, length: 120, width: [22, 15] })
const sick = limb(sound.to, { angle: 40, length: 92, turn: 10, width: [15, 6] })
const side = limb(along(sound, 0.72), { angle: -14, length: 74, turn: 8, width: [9, 3] })
const canker = limb(along(sick, 0.16), { angle: 44, length: 26, width: [9, 7] })

/** Dead wood in the tree; and from near the cut below a sunken patch, back at the next side branch. */
export function DeadDrawing() {
  return (
    <>
      <Ground x={92} y={190} width={58} />
      <Wood limbs={tree.back.slice(0, 1)} lit />
      <Shoots limbs={[...tree.back.slice(0, 1), ...stay]} count={6} />
      <Shoots limbs={tree.side} />
      <Wood limbs={[tree.trunk, ...tree.front, ...tree.side]} />
      <Goes limbs={bare} />
      <Shoots limbs={[side]} count={5} length={20} />
      <Wood limbs={[sound, side]} />
      <Goes limbs={[sick]} />
      <path d={outline(canker)} fill="var(--sick)" />
    </>
  )
}
