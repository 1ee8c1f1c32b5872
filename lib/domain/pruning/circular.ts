/** Statistics of directions, in degrees clockwise from north. */

/** From each direction to the next one clockwise, in the order of the compass. They add up to 360. */
export function gapsOf(bearings: readonly number[]): number[] {
  const inOrder = bearings.map(inCircle).toSorted((a, b) => a - b)
  return inOrder.map((bearing, at) => {
    const next = inOrder[at + 1] ?? (inOrder[0] ?? 0) + 360
    return next - bearing
  })
}

/** 0: they pull evenly to all sides. 1: all the same way. Null without any. */
export function meanResultant(bearings: readonly number[]): number | null {
  if (bearings.length === 0) return null
  const sum = (part: (radians: number) => number) =>
    bearings.reduce((total, bearing) => total + part((bearing * Math.PI) / 180), 0)
  return Math.hypot(sum(Math.cos), sum(Math.sin)) / bearings.length
}

/** Below ten the approximation is not to be trusted, and there is little to test. */
const fewestForTest = 10

/**
 * Rayleigh's test that directions stand to no side: how often chance alone leans as much as this. The
 * approximation of Zar, Biostatistical Analysis, chapter 27. Null: too few.
 */
export function rayleighP(bearings: readonly number[]): number | null {
  const mean = meanResultant(bearings)
  const n = bearings.length
  if (mean === null || n < fewestForTest) return null
  const resultant = n * mean
  return Math.min(1, Math.exp(Math.sqrt(1 + 4 * n + 4 * (n ** 2 - resultant ** 2)) - (1 + 2 * n)))
}

export function inCircle(bearing: number): number {
  return ((bearing % 360) + 360) % 360
}
