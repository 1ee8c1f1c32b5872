'use client'

import { type BudCounts, loadOn, tenths } from '@/lib/domain/pruning/shorten'
import { useFormat } from '../../layout/use-format'
import { useWords } from '../../layout/Words'
import { ahead, along, limb, outline } from '../../tree/drawings/limb'
import { Goes, Wood } from '../../tree/drawings/Wood'

type ShortenDrawingProps = {
  /** Null: the crop is not on the shoots. */
  counts: BudCounts | null
  taken: number
  shootCm: number
}

const branch = limb({ x: -8, y: 104 }, { angle: 86, length: 74, turn: -4, width: [34, 18] })
const mostCm = 150
const longest = 286
const shortest = 120
/** So many buds are drawn, wherever they sit. */
const drawnBuds = 26
const fullArrow = 64

/** A shoot at the end of its limb: its buds, what goes, and where the crop pulls, before and now. */
export function ShortenDrawing({ counts, taken, shootCm }: ShortenDrawingProps) {
  const { cuts } = useWords()
  const format = useFormat()
  const length = shortest + ((longest - shortest) * Math.min(shootCm, mostCm)) / mostCm
  const shoot = limb(branch.to, { angle: 82, length, turn: -6, width: [14, 6] })
  return (
    <figure className="step-drawing is-whole">
      <svg
        className="art"
        viewBox="0 0 358 200"
        role="img"
        aria-label={cuts.shorten.picture(format.share(taken))}
      >
        <Wood limbs={[branch]} />
        <path fill="var(--shoot)" d={outline(shoot, 0, 1 - taken)} />
        {taken > 0 && <Goes limbs={[shoot]} cutAt={1 - taken} />}
        {counts && <Buds counts={counts} shoot={shoot} left={1 - taken} />}
        {counts && <Pull counts={counts} shoot={shoot} taken={taken} />}
      </svg>
    </figure>
  )
}

type OnShoot = { counts: BudCounts; shoot: Parameters<typeof along>[0] }

function Buds({ counts, shoot, left }: OnShoot & { left: number }) {
  const all = counts.reduce((total, count) => total + count, 0)
  return counts.flatMap((count, tenth) => {
    const here = Math.round((count / all) * drawnBuds)
    return Array.from({ length: here }, (_, at) => {
      const share = (tenth + (at + 0.5) / here) / tenths
      const there = along(shoot, share)
      const { x, y } = ahead(there, there.angle + (at % 2 === 0 ? 90 : -90), 7)
      const goes = share > left
      return (
        <circle
          key={share}
          cx={x}
          cy={y}
          r="4"
          fill={goes ? 'var(--draw-paper, var(--paper))' : 'var(--wood)'}
          stroke={goes ? 'var(--goes)' : 'none'}
          strokeWidth="2"
        />
      )
    })
  })
}

/** The crop taken together, as an arrow where it hangs; dotted where it would hang uncut. */
function Pull({ counts, shoot, taken }: OnShoot & { taken: number }) {
  const { cuts } = useWords()
  const before = loadOn(counts, 0)
  const now = loadOn(counts, taken)
  const [uncut, cut] = [along(shoot, before.reach), along(shoot, now.reach)]
  const height = fullArrow * (before.load === 0 ? 0 : now.load / before.load)
  return (
    <>
      {taken > 0 && (
        <g>
          <Arrow x={uncut.x} y={uncut.y + 12} height={fullArrow} dotted />
          <text className="measure" x={uncut.x + 34} y={uncut.y + 30 + fullArrow}>
            {cuts.shorten.before}
          </text>
        </g>
      )}
      {now.load > 0 && <Arrow x={cut.x} y={cut.y + 12} height={height} />}
    </>
  )
}

function Arrow({
  x,
  y,
  height,
  dotted = false,
}: {
  x: number
  y: number
  height: number
  dotted?: boolean
}) {
  const tip = y + height
  return (
    <path
      d={`M${x} ${y}V${tip}M${x - 7} ${tip - 9}L${x} ${tip}L${x + 7} ${tip - 9}`}
      fill="none"
      stroke="var(--ink)"
      strokeWidth={dotted ? 2 : 4}
      strokeDasharray={dotted ? '2 6' : undefined}
      strokeLinecap="round"
    />
  )
}
