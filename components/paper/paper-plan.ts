/** Blocks seen from above, in numbers for a printed drawing: north is up, and everything fits. */

import { offsetFrom } from '@/lib/domain/orchard/distance'
import { hullOf, type Point } from '@/lib/domain/orchard/hull'
import { positionsOf } from '@/lib/domain/orchard/positions'
import { type Block, type Position, stands, type Tree } from '@/lib/domain/orchard/types'
import { groupBy } from '@/lib/util/group-by'

export type Placed = Point & { tree: Tree }

export type PaperPlan = {
  width: number
  height: number
  /** Units to a metre. */
  scale: number
  /** Between neighbours, in units: marks and numbers are made to fit. */
  spacing: number
  rowSpacing: number
  blocks: readonly PlannedBlock[]
  at: (position: Position) => Point
}

export type PlannedBlock = {
  block: Block
  trees: readonly Placed[]
  gaps: readonly Placed[]
  outline: readonly Point[]
  /** Where it is drawn is where it is. */
  isSurveyed: boolean
}

type Frame = { width: number; height: number }

/** Around the trees: for the numbers of the rows, and above for a name. */
const air = { side: 40, top: 82, bottom: 44 }

/** The blocks in the middle of the frame, with room around them for what is written. */
export function planOf(
  blocks: readonly Block[],
  all: readonly Tree[],
  { width, height }: Frame
): PaperPlan {
  const own = groupBy(all, ({ block }) => block)
  const trees = blocks.flatMap(({ no }) => own.get(no) ?? []).filter(isPlace)
  const positions = positionsOf(trees, blocks)
  const origin = positions.get(trees[0]?.no ?? 0)?.position ?? { lat: 0, lon: 0 }
  const metresTo = (position: Position) => {
    const { eastM, northM } = offsetFrom(origin, position)
    return { x: eastM, y: -northM }
  }
  const placed = trees.map((tree) => metresTo(positions.get(tree.no)?.position ?? origin))
  const [minX, maxX] = rangeOf(placed.map(({ x }) => x))
  const [minY, maxY] = rangeOf(placed.map(({ y }) => y))
  // A lone tree is no wider than its room.
  const [wideM, highM] = [Math.max(4, maxX - minX), Math.max(4, maxY - minY)]
  const [wide, high] = [width - 2 * air.side, height - air.top - air.bottom]
  const scale = Math.min(wide / wideM, high / highM)
  const left = air.side + (wide - wideM * scale) / 2
  const top = air.top + (high - highM * scale) / 2
  const at = (position: Position): Point => {
    const { x, y } = metresTo(position)
    return {
      x: round(left + (x - minX) * scale),
      y: round(top + (y - minY) * scale),
    }
  }
  const pointOf = (tree: Tree) => ({ tree, ...at(positions.get(tree.no)?.position ?? origin) })
  return {
    ...{ width, height, scale, at },
    spacing: scale * Math.min(...blocks.map((block) => block.treeSpacingM), 8),
    rowSpacing: scale * Math.min(...blocks.map((block) => block.rowSpacingM), 8),
    blocks: blocks.map((block) => {
      const points = trees.filter((tree) => tree.block === block.no).map(pointOf)
      return {
        block,
        trees: points.filter(({ tree }) => stands(tree)),
        gaps: points.filter(({ tree }) => tree.life === 'gap'),
        outline: hullOf(points),
        isSurveyed: block.firstTree !== null || points.some(({ tree }) => tree.position !== null),
      }
    }),
  }
}

/** A tree, or the place of one. */
function isPlace({ life }: Tree): boolean {
  return life !== 'removed'
}

/** The outlines of other blocks whose place is known, as far as one sees them beside these. */
export function neighboursOf(
  { at }: PaperPlan,
  others: readonly Block[],
  all: readonly Tree[]
): { block: Block; outline: readonly Point[] }[] {
  const trees = all.filter((tree) => isPlace(tree) && others.some(({ no }) => no === tree.block))
  const positions = positionsOf(trees, others)
  return others.flatMap((block) => {
    const own = trees.filter((tree) => tree.block === block.no)
    const isSurveyed = block.firstTree !== null || own.some(({ position }) => position !== null)
    const points = own.flatMap(({ no }) => positions.get(no)?.position ?? []).map(at)
    return isSurveyed && points.length > 0 ? [{ block, outline: hullOf(points) }] : []
  })
}

export type KeepOutOnPlan = Point & { tree: number; r: number }

export function keepOutsOn(
  { blocks, scale }: PaperPlan,
  flags: readonly { tree: number; keepOutM: number | null }[]
): KeepOutOnPlan[] {
  const placed = new Map(blocks.flatMap(({ trees }) => trees).map((one) => [one.tree.no, one]))
  return flags.flatMap(({ tree, keepOutM }) => {
    const at = placed.get(tree)
    return at && keepOutM ? [{ tree, x: at.x, y: at.y, r: keepOutM * scale }] : []
  })
}

function rangeOf(values: readonly number[]): [number, number] {
  if (values.length === 0) return [0, 0]
  return values.reduce<[number, number]>(
    ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
    [Infinity, -Infinity]
  )
}

function round(value: number): number {
  return Math.round(value * 10) / 10
}
