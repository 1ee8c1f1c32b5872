/** A line with fewer corners: those that lie on the way between others are left out. */

import type { Point } from './plane'

/** Which of the points stay, first and last always: no other is farther than this from the line. */
export function straightened(points: readonly Point[], tolerance: number): number[] {
  const last = points.length - 1
  if (last < 1) return [...points.keys()]
  const kept = [0]
  keepBetween(points, 0, last, { tolerance, kept })
  return [...kept, last]
}

type Kept = { tolerance: number; kept: number[] }

/** Ramer, Douglas and Peucker: the point farthest out stays, and splits the line in two. */
function keepBetween(points: readonly Point[], first: number, last: number, to: Kept): void {
  const farthest = farthestOut(points, first, last)
  if (farthest === null || farthest.away <= to.tolerance) return
  keepBetween(points, first, farthest.at, to)
  to.kept.push(farthest.at)
  keepBetween(points, farthest.at, last, to)
}

function farthestOut(points: readonly Point[], first: number, last: number) {
  const [from, to] = [points[first], points[last]]
  if (!from || !to) return null
  const [alongX, alongY] = [to.x - from.x, to.y - from.y]
  const length = Math.hypot(alongX, alongY)
  let best: { at: number; away: number } | null = null
  for (let at = first + 1; at < last; at++) {
    const point = points[at]
    if (!point) continue
    const [x, y] = [point.x - from.x, point.y - from.y]
    // A row that comes back to where it began has no direction.
    const away = length === 0 ? Math.hypot(x, y) : Math.abs(x * alongY - y * alongX) / length
    if (best === null || away > best.away) best = { at, away }
  }
  return best
}
