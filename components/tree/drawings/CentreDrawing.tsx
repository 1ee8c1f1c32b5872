import { along, limb } from './limb'
import { bowl, fromAbove } from './trees'
import { Goes, Ground, Shoots, Thought, Wood } from './Wood'

const tree = bowl({ x: 92, y: 190 })
const upright = [-4, 3, 14].map((angle, at) =>
  limb(
    { x: tree.fork.x - 12 + at * 12, y: tree.fork.y - 14 },
    { angle, length: 96 - at * 14, width: [9, 3] }
  )
)
const spokes = fromAbove({ x: 266, y: 96 })
const inward = [spokes[1], spokes[3]].flatMap((spoke) => {
  if (!spoke) return []
  const foot = along(spoke, 0.5)
  return [limb(foot, { angle: foot.angle + 100, length: 34, turn: 60, width: [6, 2.5] })]
})

/** A bowl from the side and from above: what stands in the middle goes. */
export function CentreDrawing() {
  return (
    <>
      <Ground x={92} y={190} width={58} />
      <Wood limbs={tree.back} lit />
      <Shoots limbs={tree.back} count={6} />
      <Shoots limbs={[...tree.front, ...tree.side]} count={4} />
      <Wood limbs={[tree.trunk, ...tree.front, ...tree.side]} />
      <Goes limbs={upright} />
      <Thought d="M18 66Q92 100 168 66" />
      <Shoots limbs={spokes} count={8} length={18} from={0.3} />
      <Wood limbs={spokes} />
      <Goes limbs={inward} />
      <circle cx="266" cy="96" r="34" fill="none" stroke="var(--ink)" strokeWidth="2" />
      <Thought d="M182 96A84 84 0 1 1 350 96A84 84 0 1 1 182 96" />
    </>
  )
}
