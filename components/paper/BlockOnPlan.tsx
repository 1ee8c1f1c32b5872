'use client'

import type { Point } from '@/lib/domain/orchard/hull'
import type { MarkName } from '../ui/Mark'
import { rowEnds } from './map-facts'
import type { PaperPlan, PlannedBlock } from './paper-plan'

type BlockOnPlanProps = {
  plan: PaperPlan
  planned: PlannedBlock
  markOf: (tree: number) => MarkName
}

/** From here on there is room for the number of each place below its mark. */
const roomForNumbers = 26

/** A block on a drawing: its outline, rows with their numbers at both ends, each tree with its shape, empty places. */
export function BlockOnPlan({ plan, planned, markOf }: BlockOnPlanProps) {
  const { spacing, rowSpacing } = plan
  const size = Math.max(5, Math.min(16, Math.min(spacing, rowSpacing) * 0.75))
  const hasNumbers = Math.min(spacing, rowSpacing) >= roomForNumbers
  return (
    <>
      <path className="block-line" d={pathOf(planned.outline)} strokeWidth={size * 2.2} />
      {rowEnds(planned, plan).map(({ row, x, y, isTagged }) => (
        <g key={`${row} ${isTagged}`} transform={`translate(${x} ${y})`}>
          {isTagged && <rect className="row-tag" x={-11} y={-8.5} width={22} height={17} rx={3} />}
          <text className="in-middle" dy="0.36em">
            {row}
          </text>
        </g>
      ))}
      {planned.trees.map(({ tree, x, y }) => (
        <g key={tree.no}>
          <circle className="canopy" cx={x} cy={y} r={size * 0.62} />
          <use
            href={`#m-${markOf(tree.no)}`}
            x={x - size / 2}
            y={y - size / 2}
            width={size}
            height={size}
          />
          {hasNumbers && (
            <text className="place-no" x={x} y={y + size / 2 + 9}>
              {tree.place}
            </text>
          )}
        </g>
      ))}
      {planned.gaps.map(({ tree, x, y }) => (
        <path
          key={tree.no}
          className="gap-cross"
          transform={`translate(${x} ${y}) scale(${size / 16})`}
          d="M-5-5 5 5M5-5-5 5"
        />
      ))}
    </>
  )
}

/** Closed, unless it has no inside. */
export function pathOf(outline: readonly Point[]): string {
  const corners = outline.map(({ x, y }) => `${x} ${y}`).join('L')
  return corners === '' ? '' : `M${corners}${outline.length > 2 ? 'Z' : ''}`
}
