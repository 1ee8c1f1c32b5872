/** Where along a straight row trees may stand: inside the outline, and far enough from every side. */

/** On the sheet: along the row, and across the rows. */
export type Spot = { along: number; across: number }
/** From and to, along the row. */
export type Span = [number, number]

/**
 * Positions are kept to the centimetre, so half of one decides nothing: a row that lies along a side is inside,
 * and a tree exactly at the headland's end stays.
 */
export const toleranceM = 0.005

/** The spans of the row at `across`, in order. */
export function spansAt(outline: readonly Spot[], across: number, headlandM: number): Span[] {
  const inside = insideSpans(outline, across)
  if (headlandM <= toleranceM) return inside
  return outline.reduce((spans, from, at) => {
    const to = outline[(at + 1) % outline.length] ?? from
    const near = nearSpan(from, to, { across, reach: headlandM - toleranceM })
    return near ? spans.flatMap((span) => cutOut(span, near)) : spans
  }, inside)
}

/** Even and odd crossings of the row's line with the sides. */
function insideSpans(outline: readonly Spot[], asked: number): Span[] {
  const lowest = Math.min(...outline.map(({ across }) => across))
  const highest = Math.max(...outline.map(({ across }) => across))
  if (asked < lowest - toleranceM || asked > highest + toleranceM) return []
  const across = Math.min(Math.max(asked, lowest + toleranceM), highest - toleranceM)
  const crossings = outline
    .flatMap((from, at) => {
      const to = outline[(at + 1) % outline.length] ?? from
      if (from.across <= across === to.across <= across) return []
      const share = (across - from.across) / (to.across - from.across)
      return [from.along + share * (to.along - from.along)]
    })
    .toSorted((a, b) => a - b)
  return crossings.flatMap((start, index) => {
    const end = crossings[index + 1]
    return index % 2 === 0 && end !== undefined ? [[start, end] satisfies Span] : []
  })
}

type Row = { across: number; reach: number }

/**
 * The part of the row's line that is nearer to a side than `reach`. What is near a side is a stadium, which is
 * convex, so the three parts of it (round each end, beside the middle) make one span.
 */
function nearSpan(from: Spot, to: Spot, row: Row): Span | null {
  const parts = [nearPoint(from, row), nearPoint(to, row), besideSide(from, to, row)].filter(
    (part) => part !== null
  )
  if (parts.length === 0) return null
  return [Math.min(...parts.map(([start]) => start)), Math.max(...parts.map(([, end]) => end))]
}

function nearPoint(point: Spot, { across, reach }: Row): Span | null {
  const away = across - point.across
  if (Math.abs(away) >= reach) return null
  const half = Math.sqrt(reach * reach - away * away)
  return [point.along - half, point.along + half]
}

/** Between the two ends, and less than `reach` to the left or right: both are linear along the row. */
function besideSide(from: Spot, to: Spot, { across, reach }: Row): Span | null {
  const length = Math.hypot(to.along - from.along, to.across - from.across)
  if (length === 0) return null
  const unit = {
    along: (to.along - from.along) / length,
    across: (to.across - from.across) / length,
  }
  const away = across - from.across
  // At `along` = from.along + x: how far towards `to`, and how far to the side of the line.
  const between = linearSpan(unit.along, unit.across * away, [0, length])
  const beside = linearSpan(-unit.across, unit.along * away, [-reach, reach])
  if (!between || !beside) return null
  const span: Span = [Math.max(between[0], beside[0]), Math.min(between[1], beside[1])]
  return span[0] < span[1] ? [from.along + span[0], from.along + span[1]] : null
}

/** The x for which slope · x + start lies between the two bounds. */
function linearSpan(slope: number, start: number, [low, high]: Span): Span | null {
  if (Math.abs(slope) < 1e-12) return start > low && start < high ? [-Infinity, Infinity] : null
  const [a, b] = [(low - start) / slope, (high - start) / slope]
  return [Math.min(a, b), Math.max(a, b)]
}

function cutOut(span: Span, hole: Span): Span[] {
  const left: Span = [span[0], Math.min(span[1], hole[0])]
  const right: Span = [Math.max(span[0], hole[1]), span[1]]
  return [left, right].filter(([start, end]) => start <= end)
}
