/** The way to a tree, ready to be said: "up row 7, six trees, on your left". */

import type { BlockGround, Ground, Spot } from './ground'
import { type Way as Approach, walkBetweenBlocks, walksFrom, waysInto } from './walk'

export type Way = {
  block: number
  alongRow: number
  /**
   * Where the last stretch along the row begins: where one stands, at the row's end, or where
   * a shorter row beside it ends and lets one through.
   */
  start: 'here' | 'tagged_end' | 'far_end' | 'shorter_row_end'
  /** Which end one walks towards on it; across: the tree is straight over the alley. */
  towards: 'tagged' | 'far' | 'across'
  /** Standing trees of the row one comes to on that stretch, the goal included. */
  trees: number
  side: 'left' | 'right' | 'ahead'
  /** The whole way; from the row's tagged end where nobody knows where one is. */
  metres: number
  paces: number
  minutes: number
}

const paceM = 0.75

/**
 * 3.5 ft/s, which traffic signals reckon people on foot with (MUTCD, US Federal Highway
 * Administration).
 */
const walkMPerS = 1.067

/** Null when the tree is not on the ground. */
export function wayTo(ground: Ground, fromNo: number | null, toNo: number): Way | null {
  const to = ground.spots.get(toNo)
  const own = to && ground.blocks.get(to.block)
  if (!to || !own) return null

  const from = fromNo === null ? undefined : ground.spots.get(fromNo)
  const stretch = lastStretch(ground, from, to)
  const ahead = to.alongM - stretch.alongM
  const isAcross = Math.abs(ahead) < besideM(own)
  const upwards = ahead > 0
  const metres = from ? walksFrom(ground, from.no)(to.no) : Math.abs(ahead)
  return {
    block: to.block,
    alongRow: to.row,
    start: stretch.start,
    towards: isAcross ? 'across' : upwards === (own.block.taggedEnd === 'low') ? 'far' : 'tagged',
    trees: isAcross ? 0 : treesPassed(ground, to, stretch.alongM),
    side: isAcross ? 'ahead' : sideOf(upwards, from, to),
    metres: Math.round(metres),
    paces: Math.round(metres / paceM),
    minutes: Math.max(1, Math.round(metres / walkMPerS / 60)),
  }
}

type Stretch = { alongM: number; start: Way['start'] }

function lastStretch(ground: Ground, from: Spot | undefined, to: Spot): Stretch {
  if (from?.block === to.block) {
    const ways = waysInto(ground.blocks.get(to.block), from, to.row)
    const way = ways.reduce((best, next) => (lengthM(next, to) < lengthM(best, to) ? next : best))
    if (way.walkedM === 0) return { alongM: way.alongM, start: 'here' }
    return fromEnd(ground, to, way.alongM)
  }
  if (from) return fromEnd(ground, to, walkBetweenBlocks(ground, from, to).alongM)

  const wall = wallOf(ground, to)
  const taggedM = isTaggedLow(ground, to) ? wall?.lowM : wall?.highM
  return fromEnd(ground, to, taggedM ?? to.alongM)
}

function lengthM(way: Approach, to: Spot): number {
  return way.walkedM + Math.abs(to.alongM - way.alongM)
}

function fromEnd(ground: Ground, to: Spot, alongM: number): Stretch {
  const { lowM, highM } = wallOf(ground, to) ?? { lowM: alongM, highM: alongM }
  if (alongM > lowM + 0.01 && alongM < highM - 0.01) return { alongM, start: 'shorter_row_end' }
  const isLow = alongM - lowM < highM - alongM
  return { alongM, start: isLow === isTaggedLow(ground, to) ? 'tagged_end' : 'far_end' }
}

function isTaggedLow(ground: Ground, { block }: Spot): boolean {
  return ground.blocks.get(block)?.block.taggedEnd !== 'high'
}

function wallOf(ground: Ground, { block, row }: Spot) {
  return ground.blocks.get(block)?.walls.find((wall) => wall.row === row)
}

function treesPassed(ground: Ground, to: Spot, startM: number): number {
  const own = ground.blocks.get(to.block)
  const way = Math.sign(to.alongM - startM)
  return (own?.standing.get(to.row) ?? []).filter(
    (alongM) => (alongM - startM) * way >= besideM(own) && (alongM - to.alongM) * way <= 0
  ).length
}

/** A tree this near is beside one, not ahead; a row's end is half a spacing before its tree. */
function besideM(own: BlockGround | undefined): number {
  return (own?.block.treeSpacingM ?? 0) / 3
}

/**
 * Coming from another row of the block one is in the alley on that side. In all other cases
 * either alley will do, and the one with the tree on the left is named.
 */
function sideOf(upwards: boolean, from: Spot | undefined, to: Spot): Way['side'] {
  if (from?.block !== to.block || from.row === to.row) return 'left'
  return upwards === to.row > from.row ? 'right' : 'left'
}
