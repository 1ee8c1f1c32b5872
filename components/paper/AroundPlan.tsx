'use client'

import { useMemo } from 'react'

import { treesAround } from '@/lib/domain/orchard/around'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import type { TreeFacts } from '../tree/use-tree'
import { radiusOf, scaleOf } from './around-plan'
import { usePlaces } from './use-places'

/** Half the width of the drawing. */
const half = 100

/** A tree among its neighbours, in black and white: told apart by shape, with row and tree beside each. */
export function AroundPlan({ facts, keepOutM }: { facts: TreeFacts; keepOutM: number | null }) {
  const { referral } = useLeadWords()
  const format = useFormat()
  const ground = useSelect((view) => view.ground)
  const places = usePlaces()
  const { tree, block, tag } = facts
  const radiusM = radiusOf(keepOutM, Math.max(block.rowSpacingM, block.treeSpacingM))
  // The corners are seen too.
  const around = useMemo(
    () => treesAround(tree, { block, trees: ground.trees.values(), places }, radiusM * Math.SQRT2),
    [tree, block, ground, places, radiusM]
  )
  const perM = half / radiusM
  const scaleM = scaleOf(radiusM)
  return (
    <figure className="plan">
      <svg viewBox="-104 -104 208 224" role="img" aria-label={`${referral.map}: ${tag}`}>
        <rect className="edge" x={-half} y={-half} width={2 * half} height={2 * half} />
        {keepOutM !== null && keepOutM > 0 && (
          <circle className="closed" r={Math.min(keepOutM * perM, half)} />
        )}
        {around.trees.map(({ tree: other, rightM, upM }) => {
          const [x, y] = [rightM * perM, -upM * perM]
          if (Math.abs(x) > half - 5 || Math.abs(y) > half - 9) return null
          return (
            <g key={other.no}>
              <circle className="other" cx={x} cy={y} r="3.6" />
              <text x={x} y={y + 12}>
                {other.row}·{other.place}
              </text>
            </g>
          )
        })}
        <path className="hazard" d="M0-9 9 7H-9Z" />
        <text className="this" y="18">
          {tag}
        </text>
        {around.northUp && (
          <g className="north">
            <path d="M88-74V-94M82-86 88-94 94-86" />
            <text x="88" y="-66">
              N
            </text>
          </g>
        )}
        <path
          className="scale"
          d={`M${-half} 112H${-half + scaleM * perM}M${-half} 108V116M${-half + scaleM * perM} 108V116`}
        />
        <text className="scale-words" x={-half + scaleM * perM + 6} y="115">
          {referral.scale(format.distance(scaleM))}
        </text>
      </svg>
      <figcaption>
        ▲ {referral.thisTree} · ○ {referral.otherTree} · ┄ {referral.closedGround}.{' '}
        {around.northUp ? referral.northUp : referral.rowsUp}.
      </figcaption>
    </figure>
  )
}
