import { along, limb } from './limb'
import { bowl } from './trees'
import { Goes, Ground, Shoots, Thought, Wood } from './Wood'

const tree = bowl({ x: 179, y: 192 })
const inside = tree.front.map((main) => {
  const foot = along(main, 0.28)
  const inward = -Math.sign(main.to.x - main.from.x)
  return limb(foot, { angle: foot.angle + inward * 60, length: 30, width: [5, 2] })
})

/** The hand begins low at the trunk and works up and out. */
export function InsideDrawing() {
  return (
    <>
      <Ground x={179} y={192} width={64} />
      <Wood limbs={tree.back} lit />
      <Shoots limbs={[...tree.back, ...tree.front, ...tree.side]} count={5} />
      <Wood limbs={[tree.trunk, ...tree.front, ...tree.side]} />
      <Goes limbs={inside} />
      <Thought d="M206 160C250 148 280 118 296 66" />
      <path d="M286 74 298 60 304 78" fill="none" stroke="var(--ink)" strokeWidth="2.5" />
      <circle cx="206" cy="162" r="11" fill="var(--ink)" />
      <path d="M206 156V168M200 162H212" stroke="var(--on-ink)" strokeWidth="2.5" />
    </>
  )
}
