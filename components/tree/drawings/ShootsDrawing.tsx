import type { LastYearsWood } from '@/lib/domain/pruning/last-years-wood'
import { ahead, along, type Limb, limb, outline } from './limb'
import { Goes, Wood } from './Wood'

const branch = limb({ x: 22, y: 172 }, { angle: 78, length: 300, turn: -14, width: [20, 9] })
const shoots: Limb[] = [0.18, 0.36, 0.54, 0.72, 0.9].map((share, at) => {
  const foot = along(branch, share)
  return limb(foot, {
    angle: foot.angle - 62 - at * 3,
    length: 104 - at * 6,
    turn: 8,
    width: [6, 3.4],
  })
})
const crowding = shoots.filter((_, at) => at === 1 || at === 3)
const staying = shoots.filter((shoot) => !crowding.includes(shoot))

/** Last year's shoots on a branch: shortened by a third, thinned but not shortened, or left alone. */
export function ShootsDrawing({ what }: { what: LastYearsWood }) {
  switch (what) {
    case 'outer_third':
      return (
        <>
          <Wood limbs={[branch]} />
          <Young limbs={shoots} />
          <Buds limbs={shoots} upTo={0.62} />
          <Goes limbs={shoots} cutAt={2 / 3} />
        </>
      )
    case 'outer_half':
      return (
        <>
          <Wood limbs={[branch]} />
          <Young limbs={shoots} />
          <Buds limbs={shoots} upTo={0.47} />
          <Goes limbs={shoots} cutAt={1 / 2} />
        </>
      )
    case 'never':
    case 'leave_short':
    case 'do_not_shorten':
      return (
        <>
          <Wood limbs={[branch]} />
          <Young limbs={staying} />
          <Buds limbs={staying} from={what === 'do_not_shorten' ? 0 : 0.45} upTo={1} />
          <Goes limbs={crowding} />
        </>
      )
    case 'leave_and_ask':
    case 'another_winter':
      return (
        <>
          <Wood limbs={[branch]} />
          <Young limbs={shoots} />
        </>
      )
  }
}

function Young({ limbs }: { limbs: readonly Limb[] }) {
  return <path fill="var(--shoot)" d={limbs.map((one) => outline(one)).join('')} />
}

/** The fruit buds, where they sit. */
function Buds({ limbs, from = 0, upTo }: { limbs: readonly Limb[]; from?: number; upTo: number }) {
  return limbs.flatMap((shoot) =>
    [0.15, 0.31, 0.47, 0.62, 0.8, 0.96]
      .filter((share) => share >= from && share <= upTo)
      .map((share, at) => {
        const there = along(shoot, share)
        const { x, y } = ahead(there, there.angle + (at % 2 === 0 ? 90 : -90), 5)
        return <circle key={`${x} ${y}`} cx={x} cy={y} r="3.6" fill="var(--wood)" />
      })
  )
}
