/** Trees in the order in which one comes by them. */

import { groupBy } from '@/lib/util/group-by'

export type Place = { block: number; row: number; place: number }

/** Row by row, each from the end that is nearer to where one comes from. */
export function inWalkingOrder<Placed extends Place>(
  trees: readonly Placed[],
  rankOf: (block: number) => number = () => 0
): Placed[] {
  const rows = [...groupBy(trees, ({ block, row }) => `${block}|${row}`).values()].toSorted(
    ([a], [b]) => (a && b ? rankOf(a.block) - rankOf(b.block) || inPlates(a, b) : 0)
  )
  let place = 0
  return rows.flatMap((row) => {
    const upwards = row.toSorted((a, b) => a.place - b.place)
    const [low, high] = [upwards.at(0)?.place ?? 0, upwards.at(-1)?.place ?? 0]
    const isUp = Math.abs(low - place) <= Math.abs(high - place)
    place = isUp ? high : low
    return isUp ? upwards : upwards.toReversed()
  })
}

function inPlates(a: Place, b: Place): number {
  return a.block - b.block || a.row - b.row
}
