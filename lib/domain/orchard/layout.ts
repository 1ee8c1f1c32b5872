/** Rows of trees laid into an outline: where each stands, and its row and place. */

import { type Pattern, type Spacing, shiftIn, spacingIn } from './density'
import type { Offset } from './distance'
import { isInside } from './drawn-shape'
import { areaM2, fromE7, type Sheet, sheetAround, toE7 } from './ellipsoid'
import { type OutlineFault, outlineFault } from './outline'
import { type Spot, spansAt, toleranceM } from './row-spans'
import type { Position } from './types'

export type LayoutPlan = Spacing & {
  corners: readonly Position[]
  pattern: Pattern
  /** The compass bearing that rows run on. */
  bearingDeg: number
  /** How far the first row stays from the outline's outermost corner on its side; null: as far as the headland. */
  firstRowM: number | null
  /** Left free along every side, for turning. */
  headlandM: number
  /** Seen on that bearing: the side on which row 1 is. */
  rowsFrom: 'left' | 'right'
  /** The end of the rows at which place 1 is: where the bearing comes from, or where it goes. */
  placesFrom: 'start' | 'end'
  /** Every other row is counted back, as one walks them. */
  serpentine: boolean
  /** Shapes in which the places stay empty: a pond, a shed. */
  empty: readonly (readonly Position[])[]
}

export type LaidTree = { row: number; place: number; position: Position; isGap: boolean }

export type Layout = {
  trees: readonly LaidTree[]
  rows: number
  /** Trees in the shortest and in the longest row. */
  inRow: { least: number; most: number }
  gaps: number
  areaM2: number
  spacing: Spacing
  /** Compass bearing of a walk from place 1 of row 1 upwards. */
  bearingDeg: number
}

export type LayoutFault =
  | OutlineFault
  | {
      code: 'out_of_range'
      field: 'rowSpacingM' | 'treeSpacingM' | 'bearingDeg' | 'headlandM' | 'firstRowM'
    }
  /** About so many. */
  | { code: 'too_many_trees'; about: number }
  /** Nothing fits between the headlands. */
  | { code: 'no_room' }

/** The referee takes the same (supabase: private.block_rows). */
export const ranges = {
  rowSpacingM: { least: 0.5, most: 30 },
  treeSpacingM: { least: 0.5, most: 30 },
  bearingDeg: { least: 0, most: 360 },
  headlandM: { least: 0, most: 100 },
  firstRowM: { least: 0, most: 1000 },
} as const

/** As many as go in at once. */
export const mostTreesInBlock = 100_000

/** What can be laid out is; else the first thing that is in the way. */
export function layOut(plan: LayoutPlan, mostTrees = mostTreesInBlock): Layout | LayoutFault {
  const fault = outlineFault(plan.corners) ?? rangeFault(plan)
  if (fault) return fault
  const area = areaM2(plan.corners)
  const spacing = spacingIn(plan.pattern, plan)
  const about = treesAbout(plan)
  // Before any is made: ten million would take the page with them.
  if (about > mostTrees * 2) return { code: 'too_many_trees', about }

  const sheet = sheetAround(middleOf(plan.corners))
  const turn = turnerFor(plan)
  const outline = plan.corners.map((corner) => turn.toSpot(sheet.toSheet(corner)))
  const rows = rowsIn(outline, plan, spacing)
  const spots = rows.reduce((sum, row) => sum + row.length, 0)
  if (spots === 0) return { code: 'no_room' }
  if (spots > mostTrees) return { code: 'too_many_trees', about: spots }

  const isEmpty = emptyAt(plan.empty, sheet)
  const trees = rows.flatMap((row, index) =>
    row.map((spot, at): LaidTree => {
      const onSheet = turn.toSheet(spot)
      const isCountedBack = plan.serpentine && index % 2 === 1
      return {
        row: index + 1,
        place: isCountedBack ? row.length - at : at + 1,
        position: kept(sheet.toGround(onSheet)),
        isGap: isEmpty(onSheet),
      }
    })
  )
  const lengths = rows.map(({ length }) => length)
  return {
    trees,
    rows: rows.length,
    inRow: { least: Math.min(...lengths), most: Math.max(...lengths) },
    gaps: trees.filter(({ isGap }) => isGap).length,
    areaM2: area,
    spacing,
    bearingDeg: (plan.bearingDeg + (plan.placesFrom === 'end' ? 180 : 0)) % 360,
  }
}

/** By the spacing alone: edges and headlands hold fewer. */
export function treesAbout(plan: LayoutPlan): number {
  const { rowSpacingM, treeSpacingM } = spacingIn(plan.pattern, plan)
  return areaM2(plan.corners) / (rowSpacingM * treeSpacingM)
}

function rangeFault(plan: LayoutPlan): LayoutFault | null {
  // The list holds the names of the record's own keys.
  const fields = Object.keys(ranges) as (keyof typeof ranges)[]
  const field = fields.find((name) => {
    const value = plan[name]
    return value !== null && !(value >= ranges[name].least && value <= ranges[name].most)
  })
  return field ? { code: 'out_of_range', field } : null
}

/** Rows from row 1 on, each from its place 1 on; rows on which nothing fits are left out. */
function rowsIn(outline: readonly Spot[], plan: LayoutPlan, spacing: Spacing): Spot[][] {
  const { rowSpacingM, treeSpacingM } = spacing
  const firstAcross =
    Math.min(...outline.map(({ across }) => across)) + (plan.firstRowM ?? plan.headlandM)
  const firstAlong = Math.min(...outline.map(({ along }) => along)) + plan.headlandM
  const lastAcross = Math.max(...outline.map(({ across }) => across))
  const rows: Spot[][] = []
  for (let index = 0; ; index++) {
    const across = firstAcross + index * rowSpacingM
    if (across > lastAcross + toleranceM) return rows
    // One grid for all rows, so that trees line up across them, too.
    const start = firstAlong + (index % 2) * shiftIn(plan.pattern) * treeSpacingM
    const places = spansAt(outline, across, plan.headlandM).flatMap(([from, to]) =>
      multiples(treeSpacingM, from - start, to - start)
    )
    // Where two spans touch, both have the tree between them.
    const row = [...new Set(places)].map((at) => ({ along: start + at * treeSpacingM, across }))
    if (row.length > 0) rows.push(row)
  }
}

/** How often a length fits, for all that lie between two lengths. */
function multiples(of: number, fromM: number, toM: number): number[] {
  const first = Math.ceil((fromM - toleranceM) / of)
  const last = Math.floor((toM + toleranceM) / of)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at)
}

/** Row 1 lies where `across` is least, place 1 where `along` is. */
function turnerFor({ bearingDeg, rowsFrom, placesFrom }: LayoutPlan) {
  const angle = (bearingDeg * Math.PI) / 180
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)]
  const up = placesFrom === 'start' ? 1 : -1
  const right = rowsFrom === 'left' ? 1 : -1
  return {
    toSpot: ({ eastM, northM }: Offset): Spot => ({
      along: up * (eastM * sine + northM * cosine),
      across: right * (eastM * cosine - northM * sine),
    }),
    toSheet: ({ along, across }: Spot): Offset => ({
      eastM: up * along * sine + right * across * cosine,
      northM: up * along * cosine - right * across * sine,
    }),
  }
}

function emptyAt(shapes: LayoutPlan['empty'], { toSheet }: Sheet): (offset: Offset) => boolean {
  const flat = shapes.map((shape) =>
    shape.map(toSheet).map(({ eastM, northM }) => ({ x: eastM, y: northM }))
  )
  return ({ eastM, northM }) => flat.some((shape) => isInside(shape, { x: eastM, y: northM }))
}

/** Good enough for a middle: nobody's block is at a pole. Across the antimeridian it counts from the first corner. */
function middleOf(corners: readonly Position[]): Position {
  const first = corners[0] ?? { lat: 0, lon: 0 }
  const lons = corners.map(({ lon }) => lon - Math.round((lon - first.lon) / 360) * 360)
  return { lat: mean(corners.map(({ lat }) => lat)), lon: mean(lons) }
}

function mean(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0) / numbers.length
}

/** Rounded as it will be kept, so that what is shown is what is made. */
function kept({ lat, lon }: Position): Position {
  return { lat: fromE7(toE7(lat)), lon: fromE7(toE7(lon)) }
}
