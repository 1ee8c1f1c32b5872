/**
 * Ordinary runs along a row: a run is sick or healthy trees without a break. Few runs for so many
 * sick trees say that they stand together. Madden, Louie, Abt and Knoke 1982, Phytopathology
 * 72:195-198, who found it the best of the tests they tried; moments by Wald and Wolfowitz.
 */

export type Runs = {
  trees: number
  sick: number
  runs: number
  mean: number
  variance: number
  /** With half a run's allowance for counting in wholes. */
  z: number
  /** Of as few runs or fewer by chance, exactly. */
  pAsFew: number
}

/** Null where nothing can be said: all alike, or too short to vary. */
export function runsAlong(row: readonly boolean[]): Runs | null {
  const trees = row.length
  const sick = row.filter((one) => one).length
  const healthy = trees - sick
  const pairs = 2 * sick * healthy
  if (pairs === 0 || trees < 3) return null

  const runs = row.filter((one, at) => at === 0 || one !== row[at - 1]).length
  const mean = 1 + pairs / trees
  const variance = (pairs * (pairs - trees)) / (trees * trees * (trees - 1))
  return { trees, sick, runs, mean, variance, z: zOf(runs, mean, variance), pAsFew: asFew(runs) }

  function asFew(most: number): number {
    let ways = 0
    for (let count = 2; count <= most; count++) ways += waysOf(count)
    return Math.min(1, ways)
  }

  /** The chance of exactly so many runs. */
  function waysOf(count: number): number {
    const half = Math.floor(count / 2)
    const split = (ofSick: number, ofHealthy: number) =>
      Math.exp(
        lnChoose(sick - 1, ofSick - 1) +
          lnChoose(healthy - 1, ofHealthy - 1) -
          lnChoose(trees, sick)
      )
    return count % 2 === 0 ? 2 * split(half, half) : split(half + 1, half) + split(half, half + 1)
  }
}

/** Below this the sick trees of a row stand together: one-sided, one in twenty. */
const aggregatedBelow = -1.64

/** Of several rows as one: their runs, means and variances add up. */
export function runsOfRows(
  rows: readonly Runs[]
): { rows: number; together: number; z: number } | null {
  if (rows.length === 0) return null
  const sum = (of: (row: Runs) => number) => rows.reduce((total, row) => total + of(row), 0)
  return {
    rows: rows.length,
    together: rows.filter(({ z }) => z < aggregatedBelow).length,
    z: zOf(
      sum(({ runs }) => runs),
      sum(({ mean }) => mean),
      sum(({ variance }) => variance)
    ),
  }
}

function zOf(runs: number, mean: number, variance: number): number {
  return (runs + 0.5 - mean) / Math.sqrt(variance)
}

function lnChoose(n: number, k: number): number {
  if (k < 0 || k > n) return Number.NEGATIVE_INFINITY
  let sum = 0
  for (let factor = 1; factor <= k; factor++) sum += Math.log((n - k + factor) / factor)
  return sum
}
