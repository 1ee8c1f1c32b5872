import type { ReactNode } from 'react'

type WheelProps = {
  /** What it shows, for those who do not see it. */
  label: string
  limbs: readonly { bearingDeg: number; goes: boolean }[]
}

const rim = 84
const trunk = 15

/** A tree from above: limbs as spokes, numbered as in the list. What goes is an outline with a bar. */
export function Wheel({ label, limbs }: WheelProps) {
  return (
    <svg className="wheel" viewBox="-108 -108 216 216" role="img" aria-label={label}>
      <circle r={rim} className="rim" />
      <path className="north" d="M-6-98 0-106 6-98" />
      <text className="north-word" x="15" y="-96">
        N
      </text>
      {limbs.map(({ bearingDeg, goes }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a limb is its place in the list
        <Spoke key={at} bearingDeg={bearingDeg} goes={goes}>
          {at + 1}
        </Spoke>
      ))}
      <circle r={trunk} className="trunk" />
    </svg>
  )
}

type SpokeProps = { bearingDeg: number; goes: boolean; children: ReactNode }

function Spoke({ bearingDeg, goes, children }: SpokeProps) {
  const radians = (bearingDeg * Math.PI) / 180
  const [x, y] = [Math.sin(radians) * (rim + 1), -Math.cos(radians) * (rim + 1)]
  return (
    <>
      <g transform={`rotate(${bearingDeg})`} className={goes ? 'goes' : 'stays-limb'}>
        <path d={`M-5 0-2.500 ${-rim}H2.500L5 0Z`} />
        {goes && <path className="cut" d={`M-10 ${-trunk - 7}H10`} />}
      </g>
      <circle cx={x} cy={y} r="12" className={goes ? 'number goes-number' : 'number'} />
      <text x={x} y={y + 5}>
        {children}
      </text>
    </>
  )
}
