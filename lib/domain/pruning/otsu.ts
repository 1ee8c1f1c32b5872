/**
 * A threshold between dark and bright, found in the picture itself: the one that sets the two
 * classes farthest apart. Otsu 1979, IEEE Transactions on Systems, Man, and Cybernetics 9:62-66.
 */

export type Threshold = {
  /** What is brighter belongs to the bright class. */
  level: number
  darkMean: number
  brightMean: number
  /** Share of all variance that lies between the classes, 0 to 1. */
  separability: number
}

/** Null: all levels alike, there are no two classes. */
export function otsu(histogram: ArrayLike<number>): Threshold | null {
  const { count, sum, squares } = momentsOf(histogram)
  if (count === 0) return null
  const mean = sum / count
  const variance = squares / count - mean * mean
  if (variance < 1e-9) return null

  let [best, first, last] = [-1, 0, 0]
  let [below, sumBelow] = [0, 0]
  for (let level = 0; level < histogram.length - 1; level++) {
    below += histogram[level] ?? 0
    sumBelow += level * (histogram[level] ?? 0)
    const between = betweenClasses(below / count, sumBelow / count, mean)
    // Between two far peaks every level is as good; the middle one is right for pixels of an edge.
    if (between > best * (1 + 1e-12)) {
      best = between
      first = level
      last = level
    } else if (between >= best * (1 - 1e-12)) last = level
  }
  const level = Math.floor((first + last) / 2)
  return { level, ...meansAt(histogram, level), separability: best / variance }
}

function momentsOf(histogram: ArrayLike<number>) {
  let [count, sum, squares] = [0, 0, 0]
  for (let level = 0; level < histogram.length; level++) {
    const own = histogram[level] ?? 0
    count += own
    sum += own * level
    squares += own * level * level
  }
  return { count, sum, squares }
}

/** Variance between the classes, by the share and the mean up to a level. */
function betweenClasses(share: number, meanUpTo: number, mean: number): number {
  const rest = share * (1 - share)
  return rest < 1e-12 ? 0 : (mean * share - meanUpTo) ** 2 / rest
}

function meansAt(histogram: ArrayLike<number>, threshold: number) {
  let [dark, darkSum, bright, brightSum] = [0, 0, 0, 0]
  for (let level = 0; level < histogram.length; level++) {
    const own = histogram[level] ?? 0
    if (level <= threshold) {
      dark += own
      darkSum += own * level
    } else {
      bright += own
      brightSum += own * level
    }
  }
  return { darkMean: darkSum / dark, brightMean: brightSum / bright }
}
