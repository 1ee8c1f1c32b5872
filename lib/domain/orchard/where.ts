/** Which trees somebody may be standing at, when all that is known is a position and how unsure it is. */

import type { Places } from './around'
import { bearingDeg, distanceM } from './distance'
import { type Position, stands, type Tree } from './types'

/** As a device says it: the true place is within `accuracyM` with 95 % confidence (W3C Geolocation). */
export type Fix = { position: Position; accuracyM: number }

export type NearTree = {
  tree: Tree
  metres: number
  /** Compass bearing from here. */
  bearingDeg: number
  /** Within what the device knows this tree may be nearer than the nearest. */
  mayBeNearest: boolean
}

export type Where =
  /** No tree has a place on the earth. */
  | { state: 'no_places' }
  /** Farther from every tree than one would be among them. */
  | { state: 'elsewhere'; nearest: NearTree }
  /** One tree only. */
  | { state: 'at'; near: NearTree[] }
  /** One of several: so many may be the nearest. */
  | { state: 'one_of'; near: NearTree[]; candidates: number }

/** Beyond the last tree by more than this, and by more than the device is unsure, nobody is among the trees. */
const edgeM = 30

/** A tree farther than this is not the one somebody stands at, however sure the device is. */
const atTreeM = 8

export function whereIs(fix: Fix, trees: Iterable<Tree>, places: Places, count: number): Where {
  const inOrder = nearestFirst(fix.position, trees, places)
  const [first] = inOrder
  if (!first) return { state: 'no_places' }
  const near = inOrder
    .slice(0, mostCandidates)
    .map((one) => ({ ...one, mayBeNearest: one === first || mayBeNearer(fix, first, one, places) }))
  const candidates = near.filter(({ mayBeNearest }) => mayBeNearest).length
  const nearest = { ...first, mayBeNearest: true }
  if (first.metres > fix.accuracyM + edgeM) return { state: 'elsewhere', nearest }
  const shown = near.slice(0, count)
  return candidates === 1 && first.metres <= atTreeM
    ? { state: 'at', near: shown }
    : { state: 'one_of', near: shown, candidates }
}

/** Past so many it is "many", and nobody reads on. */
export const mostCandidates = 50

type Away = Omit<NearTree, 'mayBeNearest'>

function nearestFirst(from: Position, trees: Iterable<Tree>, places: Places): Away[] {
  const away: Away[] = []
  for (const tree of trees) {
    const place = places.get(tree.no)
    if (!place || !stands(tree)) continue
    const to = place.position
    away.push({ tree, metres: distanceM(from, to), bearingDeg: bearingDeg(from, to) })
  }
  return away.toSorted((a, b) => a.metres - b.metres || a.tree.no - b.tree.no)
}

/**
 * Halfway between two trees runs the line from which both are equally far. The other tree may be nearer when
 * that line comes into the circle in which the device is.
 */
function mayBeNearer(fix: Fix, first: Away, other: Away, places: Places): boolean {
  const [a, b] = [places.get(first.tree.no)?.position, places.get(other.tree.no)?.position]
  const apartM = a && b ? distanceM(a, b) : 0
  if (apartM === 0) return true
  return (other.metres ** 2 - first.metres ** 2) / (2 * apartM) <= fix.accuracyM
}

export const winds = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const
export type Wind = (typeof winds)[number]

/** The nearest of the eight winds. */
export function windOf(bearing: number): Wind {
  return winds[Math.round((((bearing % 360) + 360) % 360) / 45) % 8] ?? 'n'
}
