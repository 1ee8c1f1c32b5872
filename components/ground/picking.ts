/** Which trees of a block are picked. */

import type { Tree } from '@/lib/domain/orchard/types'

/** Rows and places from and to; what is empty has no end. */
export type Range = {
  rowFrom: number | null
  rowTo: number | null
  placeFrom: number | null
  placeTo: number | null
}

export function treesInRange(trees: readonly Tree[], range: Range): number[] {
  const { rowFrom, rowTo, placeFrom, placeTo } = range
  return trees
    .filter(
      ({ row, place }) => isBetween(row, rowFrom, rowTo) && isBetween(place, placeFrom, placeTo)
    )
    .map(({ no }) => no)
}

/** All of them go when all were picked; else the rest comes to it. */
export function toggled(picked: readonly number[], trees: readonly number[]): number[] {
  const isWhole = trees.length > 0 && trees.every((tree) => picked.includes(tree))
  const others = picked.filter((tree) => !trees.includes(tree))
  return isWhole ? others : [...others, ...trees]
}

function isBetween(number: number, from: number | null, to: number | null): boolean {
  return number >= (from ?? 1) && number <= (to ?? Number.POSITIVE_INFINITY)
}
