/** Values that cannot be what they look like, such as a phone that lay in a pocket overnight, drawn in to a limit. */

/** From a normal spread about one value in four hundred lies further out. */
const most = 3
/** What a normal spread's standard deviation is to its median distance (Hampel 1974). */
const perMedianDistance = 1.4826
/** However alike a few values are, others are possible. */
const leastSpread = 0.3

/** Drawn in, not left out: a long time still says that it was long. Under five values nothing can be said. */
export function drawIn(values: readonly number[]): (value: number) => number {
  if (values.length < 5) return (value) => value
  const middle = medianOf(values)
  const spread = Math.max(
    leastSpread,
    perMedianDistance * medianOf(values.map((value) => Math.abs(value - middle)))
  )
  return (value) => Math.min(middle + most * spread, Math.max(middle - most * spread, value))
}

function medianOf(values: readonly number[]): number {
  const inOrder = values.toSorted((a, b) => a - b)
  const half = inOrder.length / 2
  return ((inOrder[Math.ceil(half) - 1] ?? 0) + (inOrder[Math.floor(half)] ?? 0)) / 2
}
