/** Finds points near a place without looking at all of them: a grid of cells over typed arrays. */

export type Box = { minX: number; minY: number; maxX: number; maxY: number }

export type GridIndex = {
  /** Indexes of all points in the box, its edges included. */
  within: (box: Box) => number[]
  /** The nearest point not farther than `reach`, or null. */
  nearest: (x: number, y: number, reach: number) => number | null
}

export function gridIndex(xs: Float64Array, ys: Float64Array): GridIndex {
  const { minX, minY, maxX, maxY } = boxOf(xs, ys)
  // About two points a cell: few empty cells, few points to look at.
  const side = Math.max(1, Math.round(Math.sqrt(xs.length / 2)))
  const cellX = (maxX - minX) / side || 1
  const cellY = (maxY - minY) / side || 1
  const columnOf = (x: number) => clamp(Math.floor((x - minX) / cellX), 0, side - 1)
  const rowOf = (y: number) => clamp(Math.floor((y - minY) / cellY), 0, side - 1)
  const { starts, order } = sortIntoCells(xs.length, side * side, (index) => {
    return rowOf(ys[index] ?? 0) * side + columnOf(xs[index] ?? 0)
  })

  function within(box: Box): number[] {
    const found: number[] = []
    const lastColumn = columnOf(box.maxX)
    const lastRow = rowOf(box.maxY)
    for (let row = rowOf(box.minY); row <= lastRow; row++) {
      const from = starts[row * side + columnOf(box.minX)] ?? 0
      const to = starts[row * side + lastColumn + 1] ?? 0
      for (let at = from; at < to; at++) {
        const index = order[at] ?? 0
        const x = xs[index] ?? 0
        const y = ys[index] ?? 0
        if (x >= box.minX && x <= box.maxX && y >= box.minY && y <= box.maxY) found.push(index)
      }
    }
    return found
  }

  function nearest(x: number, y: number, reach: number): number | null {
    let best: number | null = null
    let bestAway = reach
    for (const index of within({
      minX: x - reach,
      minY: y - reach,
      maxX: x + reach,
      maxY: y + reach,
    })) {
      const away = Math.hypot((xs[index] ?? 0) - x, (ys[index] ?? 0) - y)
      if (away > bestAway || (away === bestAway && best !== null)) continue
      best = index
      bestAway = away
    }
    return best
  }

  return { within, nearest }
}

export function boxOf(xs: ArrayLike<number>, ys: ArrayLike<number>): Box {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity }
  for (let index = 0; index < xs.length; index++) {
    box.minX = Math.min(box.minX, xs[index] ?? 0)
    box.maxX = Math.max(box.maxX, xs[index] ?? 0)
    box.minY = Math.min(box.minY, ys[index] ?? 0)
    box.maxY = Math.max(box.maxY, ys[index] ?? 0)
  }
  return box
}

/** A counting sort: the points of cell c are order[starts[c]] to order[starts[c + 1] - 1]. */
function sortIntoCells(points: number, cells: number, cellOf: (index: number) => number) {
  const starts = new Uint32Array(cells + 1)
  const cellOfPoint = new Uint32Array(points)
  for (let index = 0; index < points; index++) {
    const cell = cellOf(index)
    cellOfPoint[index] = cell
    starts[cell + 1] = (starts[cell + 1] ?? 0) + 1
  }
  for (let cell = 0; cell < cells; cell++)
    starts[cell + 1] = (starts[cell + 1] ?? 0) + (starts[cell] ?? 0)
  const next = starts.slice()
  const order = new Uint32Array(points)
  for (let index = 0; index < points; index++) {
    const cell = cellOfPoint[index] ?? 0
    order[next[cell] ?? 0] = index
    next[cell] = (next[cell] ?? 0) + 1
  }
  return { starts, order }
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value))
}
