/** How long to wait before the next try: longer each time, and not all phones at once. */

const firstMs = 1_000
const longestMs = 30_000

export function waitMs(tries: number, share: number): number {
  return Math.min(longestMs, firstMs * 2 ** tries) * (0.5 + share / 2)
}
