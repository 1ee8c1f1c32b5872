import type { TreeLooks } from '@/lib/domain/orchard/status'
import type { SizeClass } from '@/lib/domain/orchard/types'
import { markNameOf } from '../map/mark-name'
import { type Picture, type Point, pictureHeight, pictureWidth } from './five-rows'

type FiveRowsProps = {
  picture: Picture
  looks: Pick<TreeLooks, 'get'>
  sizeOf: (tree: number) => SizeClass | null
  goal: { no: number; row: number; place: number }
  /** What the picture says, for the ear. */
  label: string
}

/** The map to the next tree: walking is up, the goal is a peg with its number. */
export function FiveRows({ picture, looks, sizeOf, goal, label }: FiveRowsProps) {
  const trees = picture.rows.flatMap((row) => row.trees)
  const way = pathThrough(picture.way)
  return (
    <div className="mapbox five-rows">
      <svg viewBox={`0 0 ${pictureWidth} ${pictureHeight}`} role="img" aria-label={label}>
        <rect width={pictureWidth} height={pictureHeight} fill="var(--map-block)" />
        {picture.rows.map((row) => (
          <path key={row.row} className="alley" d={pathThrough(row.trees)} />
        ))}
        {trees.map(({ no, x, y }) => (
          <circle
            key={no}
            cx={x}
            cy={y}
            r={canopy(sizeOf(no), picture.apart)}
            fill="var(--map-canopy)"
          />
        ))}
        <path className="way is-under" d={way} />
        <path className="way" d={way} />
        {trees.map(
          ({ no, x, y }) =>
            no !== goal.no && (
              <use
                key={no}
                href={`#m-${markNameOf(looks.get(no))}`}
                x={x - 7.5}
                y={y - 7.5}
                width="15"
                height="15"
              />
            )
        )}
        <Peg at={picture.goal} sign={String(goal.place)} />
        {picture.here && <Here at={picture.here} />}
        {picture.rows.map(({ row, labelX }) => (
          <RowLabel key={row} x={labelX} row={row} isGoal={row === goal.row} />
        ))}
      </svg>
    </div>
  )
}

function Peg({ at, sign }: { at: Point; sign: string }) {
  return (
    <g transform={`translate(${at.x} ${at.y})`}>
      <path className="peg" d="M-17-20H17V5L0 22-17 5Z" />
      <text className="sign on-called" y="4">
        {sign}
      </text>
    </g>
  )
}

function Here({ at }: { at: Point }) {
  return (
    <g transform={`translate(${at.x} ${at.y + 8})`}>
      <circle r="15" fill="var(--paper)" />
      <path d="M0-12 9.5 9.5 0 5-9.5 9.5Z" fill="var(--ink)" />
    </g>
  )
}

function RowLabel({ x, row, isGoal }: { x: number; row: number; isGoal: boolean }) {
  return (
    <g transform={`translate(${x} 14)`} className={isGoal ? 'row-label is-goal' : 'row-label'}>
      <rect x="-14" y="-11" width="28" height="22" rx="4" />
      <text className="sign is-low" y="5.5">
        {row}
      </text>
    </g>
  )
}

const radius: Record<SizeClass, number> = { young: 7, small: 10, medium: 13, large: 15 }

function canopy(size: SizeClass | null, apart: number): number {
  return Math.min(radius[size ?? 'medium'], apart * 0.48)
}

function pathThrough(points: readonly Point[]): string {
  return points
    .map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`)
    .join('')
}
