/** Which share of the trees is sick, and between what bounds it can be said. */

export type Incidence = {
  sick: number
  trees: number
  share: number
  /** Of the interval that holds the true share 95 times in 100. */
  low: number
  high: number
}

/** The 97.5 % point of the normal distribution. */
const z = 1.959_963_984_540_054

/**
 * Wilson's score interval, which keeps inside 0 and 1 and says something at 0 of n, too. Wilson
 * 1927, Journal of the American Statistical Association 22:209-212. Null where there is no tree.
 */
export function incidenceOf(sick: number, trees: number): Incidence | null {
  if (trees === 0) return null
  const share = sick / trees
  const middle = share + (z * z) / (2 * trees)
  const half = z * Math.sqrt((share * (1 - share)) / trees + (z * z) / (4 * trees * trees))
  const stretch = 1 + (z * z) / trees
  return {
    sick,
    trees,
    share,
    // At the ends the two terms are equal and only rounding is left.
    low: sick === 0 ? 0 : (middle - half) / stretch,
    high: sick === trees ? 1 : (middle + half) / stretch,
  }
}
