import { cutAcross, type Limb, line, outline, shootsOn } from './limb'

/** Wood that stays: filled, tapering. */
export function Wood({ limbs, lit = false }: { limbs: readonly Limb[]; lit?: boolean }) {
  return (
    <path
      fill={lit ? 'var(--wood-lit)' : 'var(--wood)'}
      d={limbs.map((one) => outline(one)).join('')}
    />
  )
}

/** Last year's shoots: thin and lighter. */
export function Shoots({
  limbs,
  ...how
}: {
  limbs: readonly Limb[]
  count?: number
  length?: number
  from?: number
}) {
  const shoots = limbs.flatMap((one) => shootsOn(one, how))
  return (
    <path
      d={shoots.map(line).join('')}
      fill="none"
      stroke="var(--shoot)"
      strokeWidth="1.8"
      strokeLinecap="round"
    />
  )
}

/** What goes: vermilion in outline, with a bar where the cut is. */
export function Goes({ limbs, cutAt = 0 }: { limbs: readonly Limb[]; cutAt?: number }) {
  return (
    <>
      <path
        d={limbs.map((one) => outline(one, cutAt)).join('')}
        fill="var(--draw-paper, var(--paper))"
        stroke="var(--goes)"
        strokeWidth="2"
        strokeLinejoin="round"
      />
      <path
        d={limbs.map((one) => cutAcross(one, cutAt)).join('')}
        stroke="var(--goes)"
        strokeWidth="4"
      />
    </>
  )
}

/** A line one only thinks: the rim of the bowl, the way of the hand. */
export function Thought({ d }: { d: string }) {
  return (
    <path
      d={d}
      fill="none"
      stroke="var(--ink)"
      strokeWidth="2"
      strokeDasharray="2 6"
      strokeLinecap="round"
    />
  )
}

export function Ground({ x, y, width }: { x: number; y: number; width: number }) {
  return <ellipse cx={x} cy={y} rx={width} ry="5" fill="var(--soil)" />
}
