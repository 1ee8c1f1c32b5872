'use client'

import { useMemo } from 'react'

import type { Block } from '@/lib/domain/orchard/types'
import type { TeamPlan } from '@/lib/domain/planning/shift-plan'
import { useSelect } from '@/lib/hooks'
import { discsAt, pictureOf } from '../board/block-picture'
import { useLeadWords } from '../crew/use-lead-words'

const size = { width: 480, height: 300 }

/** Each block in which somebody gets trees, with the ways through it. */
export function PlanPictures({ teams }: { teams: readonly TeamPlan[] }) {
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const here = new Set(teams.flatMap(({ trees }) => trees.map(({ block }) => block)))
  return blocks
    .filter(({ no }) => here.has(no))
    .map((block) => <PlanPicture key={block.no} block={block} teams={teams} />)
}

/** A team's way is a line from its first tree, where its number stands. */
function PlanPicture({ block, teams }: { block: Block; teams: readonly TeamPlan[] }) {
  const { plan: text } = useLeadWords()
  const trees = useSelect((view) => view.sheet?.trees)
  const picture = useMemo(() => pictureOf(block, trees ?? [], size), [block, trees])
  const at = new Map(picture.dots.map((dot) => [dot.no, dot]))
  const { width, height, spacing, dots } = picture
  const ways = teams.map(({ trees }) => trees.flatMap(({ no }) => at.get(no) ?? []))
  return (
    <figure className="plan-picture">
      <svg
        className="block-picture"
        viewBox={`0 0 ${width} ${height}`}
        role="img"
        aria-label={text.pictureOf(block.name)}
      >
        <path className="ground" d={discsAt(dots)} strokeWidth={spacing * 3} />
        <path className="canopies" d={discsAt(dots)} strokeWidth={spacing * 0.92} />
        {ways.map((way, team) => (
          <g key={teams[team]?.team[0]?.id}>
            <path className="way" d={lineThrough(way)} />
            <path className="stops" d={discsAt(way)} strokeWidth={Math.max(4, spacing * 0.5)} />
          </g>
        ))}
        {ways.map(
          (way, team) =>
            way[0] && (
              <g key={teams[team]?.team[0]?.id} className="way-no">
                <circle cx={way[0].x} cy={way[0].y} r="10" />
                <text x={way[0].x} y={way[0].y}>
                  {team + 1}
                </text>
              </g>
            )
        )}
      </svg>
      <figcaption className="small">{block.name}</figcaption>
    </figure>
  )
}

function lineThrough(way: readonly { x: number; y: number }[]): string {
  return way.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x} ${y}`).join('')
}
