import { along, limb } from './limb'
import { bowl } from './trees'
import { Goes, Ground, Shoots, Wood } from './Wood'

const tree = bowl({ x: 92, y: 190 })
const [leftMain, rightMain] = tree.front
const across = [leftMain, rightMain].flatMap((main, at) => {
  if (!main) return []
  const foot = along(main, 0.5)
  return [limb(foot, { angle: at === 0 ? 62 : -30, length: 74, turn: -10, width: [8, 2.5] })]
})

const grown = limb({ x: 206, y: 168 }, { angle: 42, length: 176, turn: -10, width: [17, 8] })
const rubbing = limb({ x: 326, y: 176 }, { angle: -44, length: 164, turn: 14, width: [13, 5] })

/** Two branches that rub: in the tree, and from near. The one that grows inward goes. */
export function CrossingDrawing() {
  return (
    <>
      <Ground x={92} y={190} width={58} />
      <Wood limbs={tree.back} lit />
      <Shoots limbs={tree.back} count={6} />
      <Shoots limbs={[...tree.front, ...tree.side]} />
      <Wood limbs={[tree.trunk, ...tree.front, ...tree.side]} />
      <Goes limbs={across.slice(0, 1)} />
      <Shoots limbs={[grown]} count={5} length={26} from={0.2} />
      <Wood limbs={[grown]} />
      <Goes limbs={[rubbing]} />
    </>
  )
}
