/** What a JPEG leaves of a picture: colour at half the size, and blocks of eight rounded by its own tables. */

/** ITU-T T.81, tables K.1 and K.2. */
const brightness = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56,
  14, 17, 22, 29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113,
  92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
]
const colour = [
  17,
  18,
  24,
  47,
  99,
  99,
  99,
  99,
  18,
  21,
  26,
  66,
  99,
  99,
  99,
  99,
  24,
  26,
  56,
  99,
  99,
  99,
  99,
  99,
  47,
  66,
  99,
  99,
  99,
  99,
  99,
  99,
  ...Array<number>(32).fill(99),
]

export function asJpeg(data: Uint8ClampedArray, side: number, quality: number): Uint8ClampedArray {
  const planes = [0, 1, 2].map((plane) =>
    Float32Array.from({ length: side * side }, (_, at) => {
      const [r, g, b] = [data[at * 4] ?? 0, data[at * 4 + 1] ?? 0, data[at * 4 + 2] ?? 0]
      if (plane === 0) return 0.299 * r + 0.587 * g + 0.114 * b - 128
      return plane === 1 ? -0.1687 * r - 0.3313 * g + 0.5 * b : 0.5 * r - 0.4187 * g - 0.0813 * b
    })
  )
  const scale = quality < 50 ? 50 / quality : 2 - quality / 50
  planes.forEach((plane, no) => {
    const small = no > 0
    const own = small ? halved(plane, side) : plane
    const ownSide = small ? side / 2 : side
    round(
      own,
      ownSide,
      (small ? colour : brightness).map((step) => Math.max(1, Math.round(step * scale)))
    )
    if (small)
      for (let at = 0; at < plane.length; at++)
        plane[at] = own[Math.floor(at / side / 2) * ownSide + Math.floor((at % side) / 2)] ?? 0
  })
  const written = new Uint8ClampedArray(data)
  for (let at = 0; at < side * side; at++) {
    const [y, cb, cr] = [(planes[0]?.[at] ?? 0) + 128, planes[1]?.[at] ?? 0, planes[2]?.[at] ?? 0]
    written.set([y + 1.402 * cr, y - 0.34414 * cb - 0.71414 * cr, y + 1.772 * cb], at * 4)
  }
  return written
}

function halved(plane: Float32Array, side: number): Float32Array {
  const half = side / 2
  return Float32Array.from({ length: half * half }, (_, at) => {
    const from = Math.floor(at / half) * 2 * side + (at % half) * 2
    return (
      ((plane[from] ?? 0) +
        (plane[from + 1] ?? 0) +
        (plane[from + side] ?? 0) +
        (plane[from + side + 1] ?? 0)) /
      4
    )
  })
}

const wave = Float64Array.from({ length: 64 }, (_, at) => {
  const [u, x] = [Math.floor(at / 8), at % 8]
  return (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16)
})

/** Whole blocks only: what is left over at an edge stays as it is. */
function round(plane: Float32Array, side: number, steps: readonly number[]): void {
  for (let top = 0; top + 8 <= side; top += 8)
    for (let left = 0; left + 8 <= side; left += 8) {
      const at = (row: number, column: number) => (top + row) * side + left + column
      const block = Float64Array.from(
        { length: 64 },
        (_, one) => plane[at(Math.floor(one / 8), one % 8)] ?? 0
      )
      const turned = cosines(cosines(block, false), false).map((value, one) => {
        const step = steps[one] ?? 1
        return Math.round(value / step) * step
      })
      cosines(cosines(turned, true), true).forEach((value, one) => {
        plane[at(Math.floor(one / 8), one % 8)] = value
      })
    }
}

/** Along one side, and the block laid over: twice is both sides. */
function cosines(block: Float64Array, back: boolean): Float64Array {
  const out = new Float64Array(64)
  for (let row = 0; row < 8; row++)
    for (let to = 0; to < 8; to++) {
      let sum = 0
      for (let from = 0; from < 8; from++)
        sum += (block[row * 8 + from] ?? 0) * (wave[back ? from * 8 + to : to * 8 + from] ?? 0)
      out[to * 8 + row] = sum
    }
  return out
}
