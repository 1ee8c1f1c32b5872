/** Rows of an inventory that are fine alone and cannot all be true. */

import { distanceM } from './distance'
import type { Column, InventoryProblem, InventoryRow, ProblemCode } from './inventory-row'
import type { Position } from './types'

export function contradictionsIn(rows: readonly InventoryRow[]): InventoryProblem[] {
  return [
    ...differing(rows, {
      column: 'place',
      code: 'place_taken',
      // Where a tree was removed, the one planted after it has a row of its own.
      keyOf: ({ block, row, place, life }) =>
        life === 'removed' ? null : JSON.stringify([block, row, place]),
      valueOf: ({ line }) => String(line),
    }),
    ...differing(rows, {
      column: 'block_name',
      code: 'block_name_differs',
      keyOf: ({ block }) => block,
      valueOf: ({ blockName }) => blockName,
    }),
    ...(['habit', 'buds'] as const).flatMap((column) =>
      differing(rows, {
        column,
        code: 'habit_differs',
        keyOf: ({ species, cultivar }) => cultivar && JSON.stringify([species, cultivar]),
        valueOf: (row) => row[column],
      })
    ),
    ...farAway(rows),
  ]
}

type Rule = {
  column: Column
  code: ProblemCode
  /** Rows with the same key must have the same value. */
  keyOf: (row: InventoryRow) => string | null
  valueOf: (row: InventoryRow) => string
}

/** The first row of each key is taken as right, and named in what is said about the others. */
function differing(rows: readonly InventoryRow[], rule: Rule): InventoryProblem[] {
  const firsts = new Map<string, InventoryRow>()
  return rows.flatMap((row) => {
    const key = rule.keyOf(row)
    if (key === null) return []
    const first = firsts.get(key) ?? row
    firsts.set(key, first)
    if (rule.valueOf(first) === rule.valueOf(row)) return []
    const { column, code } = rule
    const found =
      code === 'place_taken' ? `${row.block} ${row.row}·${row.place}` : rule.valueOf(row)
    return [{ line: row.line, column, code, found, allowed: String(first.line) }]
  })
}

const orchardM = 20_000

/** A slip in a digit, or latitude and longitude changed over, would put a tree in another land. */
function farAway(rows: readonly InventoryRow[]): InventoryProblem[] {
  const positions = rows.flatMap(({ position }) => position ?? [])
  const middle = { lat: medianOf(positions, 'lat'), lon: medianOf(positions, 'lon') }
  return rows.flatMap(({ line, position }) => {
    if (!position || distanceM(middle, position) <= orchardM) return []
    const found = `${position.lat}, ${position.lon}`
    const allowed = `${middle.lat}, ${middle.lon}`
    return [{ line, column: 'lat', code: 'position_far_away', found, allowed }]
  })
}

function medianOf(positions: readonly Position[], key: keyof Position): number {
  const inOrder = positions.map((position) => position[key]).toSorted((a, b) => a - b)
  return inOrder[Math.floor(inOrder.length / 2)] ?? 0
}
