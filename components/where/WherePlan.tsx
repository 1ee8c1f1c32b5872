'use client'

import type { Fix, NearTree } from '@/lib/domain/orchard/where'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'

/** Half the width of the drawing. */
const half = 100

/** Me in the middle, the circle in which this device is, and the nearest trees; north is up. */
export function WherePlan({ fix, near }: { fix: Fix; near: readonly NearTree[] }) {
  const { where: text } = useWords()
  const tagOf = useTagOf()
  const farthestM = near.reduce((most, { metres }) => Math.max(most, metres), 0)
  const perM = (half - 24) / Math.max(4, farthestM, Math.min(fix.accuracyM, 2 * farthestM))
  return (
    <svg className="where-plan" viewBox="-120 -104 240 208" role="img" aria-label={text.plan}>
      <circle className="where-unsure" r={Math.min(140, Math.max(3, fix.accuracyM * perM))} />
      {near.map(({ tree, metres, bearingDeg }) => {
        const turn = (bearingDeg * Math.PI) / 180
        const [x, y] = [metres * perM * Math.sin(turn), -metres * perM * Math.cos(turn)]
        return (
          <g key={tree.no}>
            <circle className="where-tree" cx={x} cy={y} r="6" />
            <text x={x} y={y + 18}>
              {tagOf(tree.no)}
            </text>
          </g>
        )
      })}
      <circle className="where-me" r="7" />
      <g className="where-north">
        <path d="M106-72V-96M100-88 106-96 112-88" />
        <text x="106" y="-58">
          N
        </text>
      </g>
    </svg>
  )
}
