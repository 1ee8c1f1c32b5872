/** What lies inside a shape that somebody drew. */

export type Corner = { x: number; y: number }

/**
 * How often the line goes round the point is not zero: whoever draws round some trees twice, or crosses the
 * beginning at the end, means what is in between as well. (The winding number, counted by the edges that cross
 * a ray to the right; from memory, checked against the sum of angles in the tests.) The last corner joins the
 * first. Two corners hold nothing. A point on the line itself may fall to either side.
 */
export function isInside(corners: readonly Corner[], { x, y }: Corner): boolean {
  let turns = 0
  for (const [at, from] of corners.entries()) {
    const to = corners[(at + 1) % corners.length] ?? from
    const isLeft = (to.x - from.x) * (y - from.y) - (x - from.x) * (to.y - from.y)
    if (from.y <= y && to.y > y && isLeft > 0) turns++
    if (from.y > y && to.y <= y && isLeft < 0) turns--
  }
  return turns !== 0
}
