/** The corners of a block, as somebody walked, tapped or typed them. */

import type { Offset } from './distance'
import { type Line, lineBetween, sheetAround } from './ellipsoid'
import type { Position } from './types'

export type OutlineFault =
  | { code: 'too_few_corners' }
  /** By index: the same place. */
  | { code: 'corner_twice'; corners: [number, number] }
  /** Sides by the index of the corner they begin at. */
  | { code: 'crosses_itself'; sides: [number, number] }
  /** Two corners are so far apart that one of them is a slip. */
  | { code: 'too_wide'; metres: number; corner: number }
  /** The corners stand in one line. */
  | { code: 'no_area' }

/** Wider than any block, and what a slip in the second decimal of a degree is. */
const widestM = 5000
/** Nearer than the best phone can tell apart. */
const sameM = 0.5

export function outlineFault(corners: readonly Position[]): OutlineFault | null {
  if (corners.length < 3) return { code: 'too_few_corners' }
  const points = onSheet(corners)
  for (const [at, point] of points.entries()) {
    const other = points.findIndex((one, index) => index < at && apartM(one, point) < sameM)
    if (other >= 0) return { code: 'corner_twice', corners: [other, at] }
  }
  const far = farOne(points)
  if (far) return { code: 'too_wide', ...far }
  const crossing = crossingSides(points)
  if (crossing) return { code: 'crosses_itself', sides: crossing }
  return Math.abs(twiceAreaOf(points)) < 2 ? { code: 'no_area' } : null
}

/** From each corner to the next, the last back to the first. */
export function sidesOf(corners: readonly Position[]): Line[] {
  return corners.map((corner, at) =>
    lineBetween(corner, corners[(at + 1) % corners.length] ?? corner)
  )
}

/** The same corners as one meets them walking round: for whoever went to them crosswise. */
export function inWalkingOrder(corners: readonly Position[]): Position[] {
  const points = onSheet(corners)
  const middle = middleOf(points)
  const turn = ({ eastM, northM }: Offset) =>
    Math.atan2(eastM - middle.eastM, northM - middle.northM)
  return [...corners.entries()]
    .toSorted(([a], [b]) => turn(points[a] ?? middle) - turn(points[b] ?? middle))
    .map(([, corner]) => corner)
}

/** Positions on a sheet around the first of them. */
function onSheet(corners: readonly Position[]): Offset[] {
  const [first] = corners
  if (!first) return []
  const { toSheet } = sheetAround(first)
  return corners.map(toSheet)
}

function middleOf(points: readonly Offset[]): Offset {
  const sum = points.reduce(
    (all, { eastM, northM }) => ({ eastM: all.eastM + eastM, northM: all.northM + northM }),
    { eastM: 0, northM: 0 }
  )
  const count = Math.max(1, points.length)
  return { eastM: sum.eastM / count, northM: sum.northM / count }
}

function apartM(a: Offset, b: Offset): number {
  return Math.hypot(a.eastM - b.eastM, a.northM - b.northM)
}

/** The corner that is furthest from all others, where some are too far apart. */
function farOne(points: readonly Offset[]): { metres: number; corner: number } | null {
  const [far] = points
    .map((point, corner) => ({
      corner,
      metres: points.reduce(
        (least, one) => (one === point ? least : Math.min(least, apartM(one, point))),
        Infinity
      ),
      most: points.reduce((most, one) => Math.max(most, apartM(one, point)), 0),
    }))
    .filter(({ most }) => most > widestM)
    .toSorted((a, b) => b.metres - a.metres)
  return far ? { metres: far.most, corner: far.corner } : null
}

function crossingSides(points: readonly Offset[]): [number, number] | null {
  const last = points.length - 1
  for (let a = 0; a <= last; a++)
    for (let b = a + 1; b <= last; b++) {
      const areNeighbours = b === a + 1 || (a === 0 && b === last)
      if (!areNeighbours && doMeet(sideAt(points, a), sideAt(points, b))) return [a, b]
      if (areNeighbours && points.length > 3 && doesFoldBack(points, a, b)) return [a, b]
    }
  return null
}

type Side = [Offset, Offset]

function sideAt(points: readonly Offset[], at: number): Side {
  const from = points[at] ?? { eastM: 0, northM: 0 }
  return [from, points[(at + 1) % points.length] ?? from]
}

/** Touching counts as well. */
function doMeet([a, b]: Side, [c, d]: Side): boolean {
  const [c1, d1] = [turnOf(a, b, c), turnOf(a, b, d)]
  const [a2, b2] = [turnOf(c, d, a), turnOf(c, d, b)]
  if (c1 * d1 < 0 && a2 * b2 < 0) return true
  return (
    (c1 === 0 && isBetween(a, b, c)) ||
    (d1 === 0 && isBetween(a, b, d)) ||
    (a2 === 0 && isBetween(c, d, a)) ||
    (b2 === 0 && isBetween(c, d, b))
  )
}

/** A side that runs back over the one before it. */
function doesFoldBack(points: readonly Offset[], a: number, b: number): boolean {
  const [first, second] = b === a + 1 ? [a, b] : [b, a]
  const [from, corner] = sideAt(points, first)
  const [, to] = sideAt(points, second)
  return (
    turnOf(from, corner, to) === 0 && (isBetween(from, corner, to) || isBetween(corner, to, from))
  )
}

/** Positive: c lies left of the way from a to b. */
function turnOf(a: Offset, b: Offset, c: Offset): number {
  return (b.eastM - a.eastM) * (c.northM - a.northM) - (b.northM - a.northM) * (c.eastM - a.eastM)
}

/** Of points in one line. */
function isBetween(a: Offset, b: Offset, c: Offset): boolean {
  return (
    Math.min(a.eastM, b.eastM) <= c.eastM &&
    c.eastM <= Math.max(a.eastM, b.eastM) &&
    Math.min(a.northM, b.northM) <= c.northM &&
    c.northM <= Math.max(a.northM, b.northM)
  )
}

function twiceAreaOf(points: readonly Offset[]): number {
  return points.reduce((sum, _, at) => {
    const [from, to] = sideAt(points, at)
    return sum + from.eastM * to.northM - to.eastM * from.northM
  }, 0)
}
