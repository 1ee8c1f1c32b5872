/** Which column of a file is what: proposed from its heading; a person decides. */

import {
  type Column,
  columns,
  headings,
  inCm,
  type LengthUnit,
  plainHead,
  unitInHead,
  unitsOf,
} from './inventory-columns'
import type { Table } from './inventory-table'
import { measureIn, numberIn } from './number-in'

/** For each heading in turn: what it is (null: left out), and in which unit. */
export type Match = { column: Column | null; unit: LengthUnit | null }

export function matchColumns(
  { heads, records }: Pick<Table, 'heads' | 'records'>,
  units: 'metric' | 'us'
): Match[] {
  const plain = heads.map(plainHead)
  const found = new Map<number, Column>()
  const isFree = (column: Column) => ![...found.values()].includes(column)
  const indexOf = (column: Column) => [...found].find(([, one]) => one === column)?.[0] ?? -1
  // The exact names first, so that "tree" is not taken by "tree height"; of two the better one, so that it is not by "no".
  for (const { index, column } of exactNames(plain)) {
    if (!found.has(index) && isFree(column)) found.set(index, column)
  }
  for (const [index, head] of plain.entries()) {
    if (found.has(index)) continue
    const near = nearest(head, columns.filter(isFree))
    if (near) found.set(index, near)
  }
  for (const [index, column] of [...found]) {
    const isNumber = column === 'place' && /^(no?|number|numero)$/.test(plain[index] ?? '')
    const isOnlyCounted = isNumber && isRunning(records, index, indexOf('row'))
    const isTwice = column === 'lat_lon' && !isFree('lat') && !isFree('lon')
    if (isOnlyCounted || isTwice) found.delete(index)
  }
  return heads.map((head, index) => {
    const column = found.get(index) ?? null
    const samples = records.slice(0, 500).map(({ fields }) => fields[index] ?? '')
    return { column, unit: column && unitFor(column, head, samples, units) }
  })
}

/** In the order of how surely the name means the column. */
function exactNames(plain: readonly string[]): { index: number; column: Column; rank: number }[] {
  const names = plain.flatMap((head, index) =>
    columns.flatMap((column) => {
      const rank = headings[column].indexOf(head)
      return rank === -1 ? [] : [{ index, column, rank }]
    })
  )
  return names.toSorted((a, b) => a.rank - b.rank)
}

/** The lines of the file, counted through several rows: no place in a row. */
function isRunning(records: Table['records'], index: number, rowIndex: number): boolean {
  const rows = new Set(records.map(({ fields }) => fields[rowIndex]))
  return (
    rows.size > 1 && records.every(({ fields }, at) => numberIn(fields[index] ?? '') === at + 1)
  )
}

/** The same column cannot be two; whichever had it before is left out. */
export function rematched(matching: readonly Match[], index: number, match: Match): Match[] {
  return matching.map((before, at) => {
    if (at === index) return match
    return match.column !== null && before.column === match.column
      ? { column: null, unit: null }
      : before
  })
}

/** As the heading says; else what makes the middle value a tree's. */
export function unitFor(
  column: Column,
  head: string,
  samples: readonly string[],
  units: 'metric' | 'us'
): LengthUnit | null {
  const allowed = unitsOf[column]
  if (!allowed) return null
  const said = unitInHead(head)
  if (said && allowed.includes(said)) return said
  const values = samples
    .flatMap((sample) => measureIn(sample)?.value ?? [])
    .toSorted((a, b) => a - b)
  const middle = values[Math.floor(values.length / 2)]
  const inOrder: readonly LengthUnit[] =
    units === 'us' ? allowed.toSorted((a, b) => Number(isUs(b)) - Number(isUs(a))) : allowed
  const [least, most] = usualCm[column as keyof typeof usualCm] ?? [0, Number.POSITIVE_INFINITY]
  const fits = (unit: LengthUnit) =>
    middle === undefined || (middle * inCm[unit] >= least && middle * inCm[unit] <= most)
  return inOrder.find(fits) ?? inOrder[0] ?? null
}

/** Common practice, no source: what orchard trees measure. */
const usualCm = { trunk_cm: [1.5, 120], height_cm: [60, 1500] } as const

function isUs(unit: LengthUnit): boolean {
  return unit === 'in' || unit === 'ft'
}

/** The longest name whose words are all in the heading. */
function nearest(head: string, free: readonly Column[]): Column | null {
  const words = new Set(head.split(' '))
  const near = free.flatMap((column) =>
    headings[column]
      .filter((name) => name.length > 2 && name.split(' ').every((word) => words.has(word)))
      .map((name) => ({ column, length: name.length }))
  )
  return near.toSorted((a, b) => b.length - a.length)[0]?.column ?? null
}
