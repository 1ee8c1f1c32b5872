/** A block while it is being set up: as typed, and what it amounts to. */

import { lineBetween } from '@/lib/domain/orchard/ellipsoid'
import { type LayoutPlan, ranges } from '@/lib/domain/orchard/layout'
import { sidesOf } from '@/lib/domain/orchard/outline'
import { positionText, type ReadPosition, readPosition } from '@/lib/domain/orchard/read-position'
import type { Position } from '@/lib/domain/orchard/types'
import type { Units } from '@/lib/text/format'
import { typedLength, typedNumber } from './lengths'

export type NewBlock = {
  name: string
  code: string
  species: string | null
  /** One text a corner; a last empty one is there to type in. */
  corners: readonly string[]
  /** Untouched: null. A bearing then follows the longest side, the first row the edge. */
  rowSpacing: string | null
  treeSpacing: string | null
  bearing: string | null
  headland: string | null
  firstRow: string | null
  pattern: LayoutPlan['pattern']
  rowsFrom: LayoutPlan['rowsFrom']
  placesFrom: LayoutPlan['placesFrom']
  serpentine: boolean
  empty: LayoutPlan['empty']
}

export const untouched: NewBlock = {
  name: '',
  code: '',
  species: null,
  corners: [],
  rowSpacing: null,
  treeSpacing: null,
  bearing: null,
  headland: null,
  firstRow: null,
  pattern: 'rectangular',
  rowsFrom: 'left',
  placesFrom: 'start',
  serpentine: false,
  empty: [],
}

/** Common practice, no source: what a standard orchard on foot is planted at, in each country's round numbers. */
const usual = {
  metric: { rowSpacingM: 6, treeSpacingM: 5, headlandM: 3 },
  us: { rowSpacingM: 20 * 0.3048, treeSpacingM: 16 * 0.3048, headlandM: 10 * 0.3048 },
} as const

export type LengthName = 'rowSpacing' | 'treeSpacing' | 'headland' | 'firstRow'

/** Each number, or null where it is not one or out of its range. */
export type Numbers = {
  rowSpacingM: number | null
  treeSpacingM: number | null
  headlandM: number | null
  /** `as the edge`: nothing was typed. */
  firstRowM: number | 'as the edge' | null
  bearingDeg: number | null
}

export function numbersIn(block: NewBlock, units: Units): Numbers {
  const length = (typed: string | null, name: keyof (typeof usual)['metric']) =>
    typed === null ? usual[units][name] : inRange(typedLength(typed, units), name)
  return {
    rowSpacingM: length(block.rowSpacing, 'rowSpacingM'),
    treeSpacingM: length(block.treeSpacing, 'treeSpacingM'),
    headlandM: length(block.headland, 'headlandM'),
    firstRowM: block.firstRow?.trim()
      ? inRange(typedLength(block.firstRow, units), 'firstRowM')
      : 'as the edge',
    bearingDeg:
      block.bearing === null
        ? longestBearing(positionsIn(block))
        : inRange(typedNumber(block.bearing), 'bearingDeg'),
  }
}

function readCorners(block: NewBlock): ReadPosition[] {
  return block.corners.map(readPosition)
}

/** Those that are read; the rest says what is wrong. */
export function positionsIn(block: NewBlock): Position[] {
  return readCorners(block).flatMap((read) => (read.state === 'read' ? [read.position] : []))
}

/** The line of each corner that is read, in their order: a line between them may still be empty. */
export function linesOfCorners(block: NewBlock): number[] {
  return readCorners(block).flatMap(({ state }, line) => (state === 'read' ? [line] : []))
}

/** Null while a number is missing. */
export function planOf(block: NewBlock, numbers: Numbers): LayoutPlan | null {
  const { rowSpacingM, treeSpacingM, bearingDeg, headlandM, firstRowM } = numbers
  const isWhole = readCorners(block).every(({ state }) => state === 'read' || state === 'empty')
  if (!isWhole || rowSpacingM === null || treeSpacingM === null) return null
  if (bearingDeg === null || headlandM === null || firstRowM === null) return null
  const { pattern, rowsFrom, placesFrom, serpentine, empty } = block
  return {
    corners: positionsIn(block),
    ...{ pattern, rowsFrom, placesFrom, serpentine, empty },
    ...{ rowSpacingM, treeSpacingM, bearingDeg, headlandM },
    firstRowM: firstRowM === 'as the edge' ? null : firstRowM,
  }
}

/** Rows mostly run along the longest side. */
function longestBearing(corners: readonly Position[]): number {
  const [longest] = sidesOf(corners).toSorted((a, b) => b.metres - a.metres)
  return longest && corners.length > 1 ? Math.round(longest.bearingDeg) % 360 : 0
}

export function withCorners(block: NewBlock, corners: readonly Position[]): NewBlock {
  return { ...block, corners: corners.map(positionText) }
}

export function withCornerAt(block: NewBlock, index: number, typed: string): NewBlock {
  const corners = [...block.corners]
  corners[index] = typed
  return { ...block, corners }
}

/** In the order of walking: a corner that is tapped goes into the side it is nearest to. */
export function withCornerAdded(block: NewBlock, at: Position): NewBlock {
  const typed = block.corners.filter((text) => text.trim() !== '')
  const corners = positionsIn(block)
  const place = corners.length < 3 ? typed.length : nearestSide(corners, at) + 1
  return { ...block, corners: typed.toSpliced(place, 0, positionText(at)) }
}

/** The side for which going by `at` is the smallest detour. */
function nearestSide(corners: readonly Position[], at: Position): number {
  const detours = corners.map((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from
    const metres = (a: Position, b: Position) => lineBetween(a, b).metres
    return metres(from, at) + metres(at, to) - metres(from, to)
  })
  return detours.indexOf(Math.min(...detours))
}

function inRange(value: number | null, name: keyof typeof ranges): number | null {
  const { least, most } = ranges[name]
  // What is shown rounded means its end.
  return value !== null && value >= least - 0.005 && value <= most + 0.005
    ? Math.min(most, Math.max(least, value))
    : null
}
