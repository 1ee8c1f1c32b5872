import { along, limb } from './limb'
import { withLeader } from './trees'
import { Goes, Ground, Shoots, Wood } from './Wood'

const tree = withLeader({ x: 179, y: 192 })
const rivals = [
  limb(along(tree.trunk, 0.5), { angle: 24, length: 92, turn: -24, width: [11, 3] }),
  limb(along(tree.trunk, 0.66), { angle: -26, length: 62, turn: 24, width: [8, 2.5] }),
]

/** One stem goes on; what stands up beside it goes. */
export function LeaderDrawing() {
  return (
    <>
      <Ground x={179} y={192} width={64} />
      <Shoots limbs={tree.tiers} count={4} length={14} />
      <Shoots limbs={[tree.trunk]} count={4} length={16} from={0.82} />
      <Wood limbs={[...tree.tiers, tree.trunk]} />
      <Goes limbs={rivals} />
    </>
  )
}
