/** One block seen from above, in numbers for an SVG: north is up, each tree where it stands. */

import { offsetFrom } from '@/lib/domain/orchard/distance'
import { positionsOf } from '@/lib/domain/orchard/positions'
import type { Look } from '@/lib/domain/orchard/status'
import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'
import type { MarkName } from '../ui/Mark'

export type Dot = { no: number; x: number; y: number }

export type BlockPicture = {
  width: number
  height: number
  /** In units of the picture: canopies and marks are drawn so large. */
  spacing: number
  /** Units to a metre. */
  scale: number
  dots: readonly Dot[]
}

const onBoard = { width: 300, height: 200 }

/** The block in the middle of the picture, with a spacing of air around it. */
export function pictureOf(
  block: Block,
  trees: readonly Tree[],
  { width, height } = onBoard
): BlockPicture {
  const own = trees.filter((tree) => tree.block === block.no && stands(tree))
  const positions = positionsOf(own, [block])
  const origin = positions.values().next().value?.position
  if (!origin) return { width, height, spacing: 10, scale: 1, dots: [] }

  const metres = own.map(({ no }) => {
    const { eastM, northM } = offsetFrom(origin, positions.get(no)?.position ?? origin)
    return { no, x: eastM, y: -northM }
  })
  const [minX, maxX] = rangeOf(metres.map(({ x }) => x))
  const [minY, maxY] = rangeOf(metres.map(({ y }) => y))
  const airM = Math.max(block.treeSpacingM, block.rowSpacingM)
  const [wideM, highM] = [maxX - minX + 2 * airM, maxY - minY + 2 * airM]
  const scale = Math.min(width / wideM, height / highM)
  const left = (width - wideM * scale) / 2
  const top = (height - highM * scale) / 2
  return {
    width,
    height,
    spacing: Math.min(block.treeSpacingM, block.rowSpacingM) * scale,
    scale,
    dots: metres.map(({ no, x, y }) => ({
      no,
      x: round(left + (x - minX + airM) * scale),
      y: round(top + (y - minY + airM) * scale),
    })),
  }
}

/** What stands out on a board: hazards, then what is done, then what is closed. */
export function boardMark(look: Look | undefined): MarkName {
  if (!look) return 'unpruned'
  if (look.status === 'arborist') return 'arborist'
  if (look.status === 'done') return 'done'
  if (look.closed) return 'closed'
  const names = { unpruned: 'unpruned', in_progress: 'inProgress', disease: 'disease' } as const
  return names[look.status]
}

/** Dots as one path: a line of no length with a round end is a disc. */
export function discsAt(dots: readonly Dot[]): string {
  return dots.map(({ x, y }) => `M${x} ${y}h0`).join('')
}

function rangeOf(values: readonly number[]): [number, number] {
  return values.reduce<[number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Infinity, -Infinity]
  )
}

function round(value: number): number {
  return Math.round(value * 10) / 10
}
