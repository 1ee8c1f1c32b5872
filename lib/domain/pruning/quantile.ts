/** The level of a histogram up to which this share of its pixels lies. */
export function quantileOf(histogram: Uint32Array, share: number): number {
  const all = histogram.reduce((sum, count) => sum + count, 0)
  let below = 0
  for (let level = 0; level < histogram.length; level++) {
    below += histogram[level] ?? 0
    if (below >= share * all) return level
  }
  return histogram.length - 1
}
