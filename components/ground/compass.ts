/** A bearing in a word. */

const points = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const
export type CompassPoint = (typeof points)[number]

export function compassPoint(bearingDeg: number): CompassPoint {
  return points[Math.round((((bearingDeg % 360) + 360) % 360) / 45) % 8] ?? 'n'
}
