'use client'

import type { Point } from '@/lib/domain/orchard/hull'
import type { MarkName } from '../ui/Mark'
import { rowEnds, rowLines } from './map-facts'
import { PlateText } from './PlateText'
import type { PaperPlan, Placed, PlannedBlock } from './paper-plan'

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
  const room = Math.min(spacing, rowSpacing)
  const size = Math.max(5, Math.min(16, room * 0.75))
  const hasNumbers = room >= roomForNumbers
  const outline = pathOf(planned.outline)
  const edge = size * 2.2
  return (
    <>
      <path className="block-edge" d={outline} strokeWidth={edge + 2.5} />
      <path className="block-ground" d={outline} strokeWidth={edge} />
      {rowLines(planned).map((row) => (
        <path key={row[0]?.tree.no} className="row-line" d={lineOf(row)} />
      ))}
      {planned.gaps.map(({ tree, x, y }) => (
        <path
          key={tree.no}
          className="gap-cross"
          transform={`translate(${x} ${y}) scale(${size / 16})`}
          d="M-5-5 5 5M5-5-5 5"
        />
      ))}
      {planned.trees.map((placed) => (
        <TreeOnPlan
          key={placed.tree.no}
          placed={placed}
          size={size}
          mark={markOf(placed.tree.no)}
          hasNumber={hasNumbers}
        />
      ))}
      {rowEnds(planned, { rowSpacing, away: hasNumbers ? 32 : 21 }).map((end) => (
        <g key={`${end.row} ${end.isTagged}`} transform={`translate(${end.x} ${end.y})`}>
          {end.isTagged && (
            <rect className="row-tag" x={-11} y={-8.5} width={22} height={17} rx={3} />
          )}
          {end.isTagged ? (
            <text dy="0.36em" fontSize={14}>
              {end.row}
            </text>
          ) : (
            <PlateText x={0} y={0} size={14}>
              {String(end.row)}
            </PlateText>
          )}
        </g>
      ))}
    </>
  )
}

type TreeOnPlanProps = { placed: Placed; size: number; mark: MarkName; hasNumber: boolean }

function TreeOnPlan({ placed: { tree, x, y }, size, mark, hasNumber }: TreeOnPlanProps) {
  return (
    <>
      <circle className="canopy" cx={x} cy={y} r={size * 0.62} />
      <use href={`#m-${mark}`} x={x - size / 2} y={y - size / 2} width={size} height={size} />
      {hasNumber && (
        <PlateText x={x} y={y + size / 2 + 7} size={10}>
          {String(tree.place)}
        </PlateText>
      )}
    </>
  )
}

/** Closed, unless it has no inside. */
export function pathOf(outline: readonly Point[]): string {
  return `${lineOf(outline)}${outline.length > 2 ? 'Z' : ''}`
}

function lineOf(points: readonly Point[]): string {
  return points.length === 0 ? '' : `M${points.map(({ x, y }) => `${x} ${y}`).join('L')}`
}
