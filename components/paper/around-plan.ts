/** How much of the orchard stands on a plan, and how long its scale is. */

const leastM = 14
const scales = [5, 10, 20, 50, 100]

/** The whole keep-out and a tree or two beyond it, else a few rows. */
export function radiusOf(keepOutM: number | null, spacingM: number): number {
  return Math.max(leastM, spacingM * 2.2, (keepOutM ?? 0) + spacingM * 0.8)
}

/** A round length, about a third of the plan. */
export function scaleOf(radiusM: number): number {
  return scales.findLast((length) => length <= radiusM * 0.7) ?? 5
}
