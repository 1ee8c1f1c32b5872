import { along, limb } from './limb'
import { Ground, Shoots, Wood } from './Wood'

const trunk = limb({ x: 179, y: 190 }, { angle: 0, length: 76, width: [13, 9] })
const limbs = [-46, 6, 50].map((angle, at) =>
  limb(along(trunk, 0.76 + at * 0.1), { angle, length: 74, turn: -angle * 0.4, width: [7, 3] })
)

/** A tree in training: few limbs, and none of them is cut. */
export function YoungDrawing() {
  return (
    <>
      <Ground x={179} y={190} width={50} />
      <Shoots limbs={limbs} count={5} length={22} />
      <Wood limbs={[trunk, ...limbs]} />
    </>
  )
}
