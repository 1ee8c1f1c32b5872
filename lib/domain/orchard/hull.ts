/** The outline of a block: the smallest convex shape round its trees. */

export type Point = { x: number; y: number }

/** Andrew's monotone chain, counter-clockwise; collinear points on the edge are left out. */
export function hullOf(points: readonly Point[]): Point[] {
  const inOrder = points.toSorted((a, b) => a.x - b.x || a.y - b.y)
  if (inOrder.length < 3) return inOrder
  const lower = chain(inOrder)
  const upper = chain(inOrder.toReversed())
  return [...lower.slice(0, -1), ...upper.slice(0, -1)]
}

function chain(inOrder: readonly Point[]): Point[] {
  const edge: Point[] = []
  for (const point of inOrder) {
    while (edge.length > 1 && !turnsLeft(edge.at(-2), edge.at(-1), point)) edge.pop()
    edge.push(point)
  }
  return edge
}

function turnsLeft(a: Point | undefined, b: Point | undefined, c: Point): boolean {
  return a !== undefined && b !== undefined && (b.x - a.x) * (c.y - a.y) > (b.y - a.y) * (c.x - a.x)
}
