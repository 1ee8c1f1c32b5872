/** Square grids of trees with some sick, written as rows of 1 and 0. */

import { type Join, type Neighbours, neighboursFrom } from '@/lib/domain/disease/neighbours'
import { chanceFrom } from '@/lib/util/chance'

/** Five by five, eight sick: worked through by hand and by other programs. */
export const exampleA = ['11000', '11000', '01000', '00001', '00011']

export function valuesOf(rows: readonly string[]): number[] {
  return rows.flatMap((row) => [...row].map(Number))
}

export function sickIn(rows: readonly string[]): Uint8Array {
  return Uint8Array.from(valuesOf(rows))
}

/** Rook: along and across; queen: over the corners, too. */
export function grid(rows: number, places: number, moves: 'rook' | 'queen'): Neighbours {
  const steps =
    moves === 'rook'
      ? [
          [0, 1],
          [1, 0],
        ]
      : [
          [0, 1],
          [1, 0],
          [1, 1],
          [1, -1],
        ]
  const joins: Join[] = []
  for (let row = 0; row < rows; row++)
    for (let place = 0; place < places; place++)
      for (const [down = 0, right = 0] of steps) {
        const [r, p] = [row + down, place + right]
        if (r < rows && p >= 0 && p < places) joins.push([row * places + place, r * places + p])
      }
  return neighboursFrom(rows * places, joins)
}

/** Every way to make `sick` of the trees sick. */
export function allWays(trees: number, sick: number): Uint8Array[] {
  if (sick === 0) return [new Uint8Array(trees)]
  if (trees < sick) return []
  const without = allWays(trees - 1, sick).map((way) => Uint8Array.of(...way, 0))
  const withLast = allWays(trees - 1, sick - 1).map((way) => Uint8Array.of(...way, 1))
  return [...without, ...withLast]
}

export function meanAndVariance(values: readonly number[]): { mean: number; variance: number } {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length
  return {
    mean,
    variance: values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length,
  }
}

export const someChance = () => chanceFrom(7)
