/** Rows of an inventory that are fine alone and cannot all be true. */

import { distanceM } from './distance'
import type { PlacedRow } from './inventory-placed'
import { type InventoryProblem, type ProblemCode, problemIn } from './inventory-problem'
import type { Position } from './types'

type Head = (column: 'place' | 'block_name' | 'habit' | 'buds' | 'lat') => string

/** `headOf`: as the file calls a column. `known`: where the orchard's trees are. */
export function contradictionsIn(
  rows: readonly PlacedRow[],
  headOf: Head,
  known: readonly Position[] = []
): InventoryProblem[] {
  return [
    ...differing(rows, {
      column: headOf('place'),
      code: 'place_taken',
      // Where a tree was removed, the one planted after it has a row of its own.
      keyOf: ({ block, row, place, life }) =>
        life === 'removed' ? null : `${block}|${row}|${place}`,
      valueOf: ({ line }) => String(line),
      foundIn: ({ block, row, place }) => `${block} ${row}·${place}`,
    }),
    ...differing(rows, {
      column: headOf('block_name'),
      code: 'block_name_differs',
      keyOf: ({ block }) => block,
      valueOf: ({ blockName }) => blockName,
      foundIn: ({ blockName }) => blockName,
    }),
    ...(['habit', 'buds'] as const).flatMap((column) =>
      differing(rows, {
        column: headOf(column),
        code: 'habit_differs',
        keyOf: ({ species, cultivar, [column]: said }) =>
          cultivar === null || said === null ? null : JSON.stringify([species, cultivar]),
        valueOf: (row) => row[column] ?? '',
        foundIn: (row) => row[column] ?? '',
      })
    ),
    ...farAway(rows, headOf('lat'), known),
  ]
}

type Rule = {
  column: string
  code: ProblemCode
  /** Rows with the same key must have the same value. */
  keyOf: (row: PlacedRow) => string | null
  valueOf: (row: PlacedRow) => string
  foundIn: (row: PlacedRow) => string
}

/** The first row of each key is taken as right, and named in what is said about the others. */
function differing(rows: readonly PlacedRow[], rule: Rule): InventoryProblem[] {
  const firsts = new Map<string, PlacedRow>()
  return rows.flatMap((row) => {
    const key = rule.keyOf(row)
    if (key === null) return []
    const first = firsts.get(key) ?? row
    firsts.set(key, first)
    if (rule.valueOf(first) === rule.valueOf(row)) return []
    const { column, code } = rule
    const said = { column, code, found: rule.foundIn(row), allowed: String(first.line) }
    return [problemIn({ line: row.line, ...said })]
  })
}

const orchardM = 20_000

/** A slip in a digit, or latitude and longitude changed over, would put a tree in another land. */
function farAway(
  rows: readonly PlacedRow[],
  column: string,
  known: readonly Position[]
): InventoryProblem[] {
  const positions = known.length > 0 ? known : rows.flatMap(({ position }) => position ?? [])
  const middle = { lat: medianOf(positions, 'lat'), lon: medianOf(positions, 'lon') }
  return rows.flatMap(({ line, position }) => {
    if (!position || distanceM(middle, position) <= orchardM) return []
    const found = `${position.lat}, ${position.lon}`
    const allowed = `${middle.lat}, ${middle.lon}`
    return [problemIn({ line, column, code: 'position_far_away', found, allowed })]
  })
}

function medianOf(positions: readonly Position[], key: keyof Position): number {
  const inOrder = positions.map((position) => position[key]).toSorted((a, b) => a - b)
  return inOrder[Math.floor(inOrder.length / 2)] ?? 0
}
