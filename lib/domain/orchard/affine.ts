/**
 * A flat picture laid on the ground by three points: moved, turned, stretched and slanted, which is all that three
 * points can say. A picture taken straight down from high up needs no more.
 */

type Point = { x: number; y: number }

/** x′ = a·x + c·y + e, y′ = b·x + d·y + f, in the order in which a canvas takes them. */
export type Affine = { a: number; b: number; c: number; d: number; e: number; f: number }

export type Pair = { from: Point; to: Point }

/** The one that brings each of three points to its other; null where they lie on one line. */
export function affineBy([first, second, third]: readonly [Pair, Pair, Pair]): Affine | null {
  const [u, v] = [between(first.from, second.from), between(first.from, third.from)]
  const [p, q] = [between(first.to, second.to), between(first.to, third.to)]
  const cross = u.x * v.y - v.x * u.y
  if (cross === 0 || p.x * q.y === q.x * p.y) return null
  const a = (p.x * v.y - q.x * u.y) / cross
  const b = (p.y * v.y - q.y * u.y) / cross
  const c = (q.x * u.x - p.x * v.x) / cross
  const d = (q.y * u.x - p.y * v.x) / cross
  const { from, to } = first
  return { a, b, c, d, e: to.x - a * from.x - c * from.y, f: to.y - b * from.x - d * from.y }
}

export function moved({ a, b, c, d, e, f }: Affine, { x, y }: Point): Point {
  return { x: a * x + c * y + e, y: b * x + d * y + f }
}

/**
 * How much longer one side of a small square becomes than the other: 1 for a picture that is only turned and
 * enlarged. A wrong tree among the three points shows here. By the singular values of the matrix.
 */
export function stretchOf({ a, b, c, d }: Affine): number {
  const sum = a * a + b * b + c * c + d * d
  const difference = Math.sqrt(Math.max(0, sum * sum - 4 * (a * d - b * c) ** 2))
  return Math.sqrt((sum + difference) / Math.max(Number.MIN_VALUE, sum - difference))
}

/** A picture from above shows the ground as one sees it standing over it, never as in a mirror. */
export function isMirrored({ a, b, c, d }: Affine): boolean {
  return a * d - b * c < 0
}

function between(from: Point, to: Point): Point {
  return { x: to.x - from.x, y: to.y - from.y }
}
