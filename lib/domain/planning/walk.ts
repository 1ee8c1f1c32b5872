/**
 * How far it is on foot.
 *
 * Nobody cuts through a row: branches, wires and people on ladders are in it. One walks along
 * the alley and straight across it, so trees of the same row or of neighbouring rows are
 * reached directly, and for every row in between one goes round one of its ends. From block
 * to block one leaves by a row's end and walks straight to an end of the other row.
 */

import type { BlockGround, Ground, Spot, Wall } from './ground'

/** Metres from one tree to any other; infinite for a tree that is not on the ground. */
export function walksFrom(ground: Ground, fromNo: number): (toNo: number) => number {
  const from = ground.spots.get(fromNo)
  if (!from) return () => Number.POSITIVE_INFINITY

  const waysToRow = new Map<number, Way[]>()
  return (toNo) => {
    const to = ground.spots.get(toNo)
    if (!to) return Number.POSITIVE_INFINITY
    if (to.block !== from.block) return walkBetweenBlocks(ground, from, to).walkedM

    const ways = waysToRow.get(to.row) ?? waysInto(ground.blocks.get(to.block), from, to.row)
    waysToRow.set(to.row, ways)
    const alongM = Math.min(...ways.map((way) => way.walkedM + Math.abs(to.alongM - way.alongM)))
    return alongM + Math.abs(to.acrossM - from.acrossM)
  }
}

/** Having reached the alley beside a row, at `alongM`, after so many metres along alleys. */
export type Way = { alongM: number; walkedM: number }

/**
 * Every way worth keeping to the near side of a row. Going on straight ahead while nothing
 * is in the way never costs more than turning early, so at each row in between there is one
 * way round its low end and one round its high end, and those that pass it anyhow.
 */
export function waysInto(ground: BlockGround | undefined, from: Spot, row: number): Way[] {
  const between = (ground?.walls ?? []).filter(
    (wall) => (wall.row - from.row) * (wall.row - row) < 0
  )
  const inOrder = row > from.row ? between : between.toReversed()
  return inOrder.reduce<Way[]>(passing, [{ alongM: from.alongM, walkedM: 0 }])
}

function passing(ways: Way[], wall: Wall): Way[] {
  const blocked = ways.filter((way) => way.alongM > wall.lowM && way.alongM < wall.highM)
  if (blocked.length === 0) return ways

  const round = [wall.lowM, wall.highM].map((endM) => ({
    alongM: endM,
    walkedM: Math.min(...blocked.map((way) => way.walkedM + Math.abs(way.alongM - endM))),
  }))
  return [...ways.filter((way) => !blocked.includes(way)), ...round]
}

/** The shortest walk to another block, and where along the goal's row it comes in. */
export function walkBetweenBlocks(ground: Ground, from: Spot, to: Spot): Way {
  const arriving = endsOf(ground, to)
  const ways = endsOf(ground, from).flatMap((out) =>
    arriving.map((into) => ({
      alongM: into.alongM,
      walkedM:
        out.walkM + Math.hypot(into.eastM - out.eastM, into.northM - out.northM) + into.walkM,
    }))
  )
  return ways.reduce((best, next) => (next.walkedM < best.walkedM ? next : best))
}

/** The two ends of a tree's row, and how far the tree is from each. */
function endsOf(ground: Ground, spot: Spot) {
  const own = ground.blocks.get(spot.block)
  const wall = own?.walls.find(({ row }) => row === spot.row)
  const endsM = wall ? [wall.lowM, wall.highM] : [spot.alongM]
  return endsM.map((endM) => ({
    ...(own?.offsetAt(endM, spot.acrossM) ?? { eastM: 0, northM: 0 }),
    alongM: endM,
    walkM: Math.abs(spot.alongM - endM),
  }))
}
