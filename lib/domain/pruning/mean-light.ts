/**
 * The light of each pixel as the mean of its three by three: noise falls to a third, and no light is lost, so that a
 * share of the whole stays what it was. A threshold could not bear this; shares that are added up can.
 */

/** The curve of sRGB backwards, IEC 61966-2-1. */
export const lightOf = Float32Array.from({ length: 256 }, (_, level) => {
  const own = level / 255
  return own <= 0.04045 ? own / 12.92 : ((own + 0.055) / 1.055) ** 2.4
})

/** One line after another, from the top; a line is only good until the next. At the picture's edge its own pixels count again. */
export function* linesOfMeanLight(
  level: Uint8Array,
  width: number,
  height: number
): Generator<Float32Array> {
  const mean = new Float32Array(width)
  const sums = [0, 1, 2].map(() => new Float32Array(width))
  const sumsOf = (y: number) => sums[((y % 3) + 3) % 3] ?? mean
  const fill = (y: number) =>
    fillSums(sumsOf(y), level, width, width * Math.min(height - 1, Math.max(0, y)))
  fill(-1)
  fill(0)
  for (let y = 0; y < height; y++) {
    fill(y + 1)
    const [above, own, below] = [sumsOf(y - 1), sumsOf(y), sumsOf(y + 1)]
    for (let x = 0; x < width; x++)
      mean[x] = ((above[x] ?? 0) + (own[x] ?? 0) + (below[x] ?? 0)) / 9
    yield mean
  }
}

/** Of each pixel of a line with its neighbours to the left and right. */
function fillSums(sums: Float32Array, level: Uint8Array, width: number, from: number): void {
  let before = lightOf[level[from] ?? 0] ?? 0
  let own = before
  for (let x = 0; x < width; x++) {
    const after = x + 1 < width ? (lightOf[level[from + x + 1] ?? 0] ?? 0) : own
    sums[x] = before + own + after
    before = own
    own = after
  }
}
