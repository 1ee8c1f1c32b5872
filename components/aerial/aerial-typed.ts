/** What was said of the three trees in a picture from above, and whether they fit together. */

import { affineBy, isMirrored, type Pair, stretchOf } from '@/lib/domain/orchard/affine'
import type { Places } from '@/lib/domain/orchard/around'
import { offsetFrom } from '@/lib/domain/orchard/distance'
import type { Block, Position, Tree } from '@/lib/domain/orchard/types'
import { findByText } from '../crew/find-by-text'

/** From the left and from the top in per cent, and what the tag says. */
export type PointTyped = { left: string; top: string; tag: string }

export const emptyPoint: PointTyped = { left: '', top: '', tag: '' }

type Ground = { trees: readonly Tree[]; blocks: readonly Block[]; places: Places }

/** Shares of the picture's width and height, and where that is. */
export type PointPlaced = { x: number; y: number; position: Position }

export type PointRead =
  | { state: 'whole'; point: PointPlaced }
  /** Nothing is wrong, something is not said yet. */
  | { state: 'lacking' }
  | { state: 'wrong'; field: 'left' | 'top'; why: 'share' }
  | { state: 'wrong'; field: 'tag'; why: 'no_tree' | 'no_place' }

export function readPoint({ left, top, tag }: PointTyped, ground: Ground): PointRead {
  const [x, y] = [shareTyped(left), shareTyped(top)]
  if (x === null) return { state: 'wrong', field: 'left', why: 'share' }
  if (y === null) return { state: 'wrong', field: 'top', why: 'share' }
  if (tag.trim() === '') return { state: 'lacking' }
  const found = findByText(tag, ground)
  if (found.state !== 'found') return { state: 'wrong', field: 'tag', why: 'no_tree' }
  const position = ground.places.get(found.tree.no)?.position
  if (!position) return { state: 'wrong', field: 'tag', why: 'no_place' }
  return x === 'empty' || y === 'empty'
    ? { state: 'lacking' }
    : { state: 'whole', point: { x, y, position } }
}

/** Null: not from 0 to 100. */
function shareTyped(text: string): number | 'empty' | null {
  const bare = text.trim().replace('%', '').replace(',', '.').trim()
  if (bare === '') return 'empty'
  const share = /^\d{1,3}(\.\d+)?$/.test(bare) ? Number(bare) / 100 : Number.NaN
  return share >= 0 && share <= 1 ? share : null
}

export type Three = readonly [PointPlaced, PointPlaced, PointPlaced]

export type Fit =
  | { state: 'fits' }
  | { state: 'one_line' }
  | { state: 'mirrored' }
  | { state: 'stretched'; times: number }

/** Two trees less than this share of the picture beside the line through the others say nothing about its width. */
const leastArea = 0.05

/** Taken straight down a picture is hardly stretched; a tree further along a row shows at once. */
const mostStretch = 1.25

export function fitOf(three: Three, size: { width: number; height: number }): Fit {
  const [first, second, third] = three
  const area =
    (second.x - first.x) * (third.y - first.y) - (third.x - first.x) * (second.y - first.y)
  const pairOf = ({ x, y, position }: PointPlaced): Pair => {
    const { eastM, northM } = offsetFrom(first.position, position)
    return { from: { x: x * size.width, y: y * size.height }, to: { x: eastM, y: -northM } }
  }
  const affine = affineBy([pairOf(first), pairOf(second), pairOf(third)])
  if (Math.abs(area) < leastArea || !affine) return { state: 'one_line' }
  if (isMirrored(affine)) return { state: 'mirrored' }
  const times = stretchOf(affine)
  return times > mostStretch ? { state: 'stretched', times } : { state: 'fits' }
}

/** As it is sent: whole ten-thousandths and 1e-7 degrees. */
export function pointsSent(three: Three): [number, number, number, number][] {
  return three.map(({ x, y, position: { lat, lon } }) => [
    Math.round(x * 10_000),
    Math.round(y * 10_000),
    Math.round(lat * 1e7),
    Math.round(lon * 1e7),
  ])
}
