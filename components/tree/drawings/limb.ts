/** The geometry of drawn wood: a limb is a bent line that tapers, with last year's shoots on it. */

export type Point = { x: number; y: number }
export type Limb = {
  from: Point
  bend: Point
  to: Point
  /** Width where it begins and where it ends. */
  width: readonly [number, number]
}

const segments = 10

/** A limb that leaves at an angle (0 is up, 90 to the right) and turns by `turn` on its way. */
export function limb(
  from: Point,
  {
    angle,
    length,
    turn = 0,
    width,
  }: { angle: number; length: number; turn?: number; width: readonly [number, number] }
): Limb {
  const bend = ahead(from, angle, length / 2)
  return { from, bend, to: ahead(bend, angle + turn, length / 2), width }
}

export function ahead({ x, y }: Point, angle: number, length: number): Point {
  const radians = (angle * Math.PI) / 180
  return { x: x + Math.sin(radians) * length, y: y - Math.cos(radians) * length }
}

/** A point on it, from 0 where it begins to 1, and the direction it grows there. */
export function along({ from, bend, to }: Limb, share: number): Point & { angle: number } {
  const rest = 1 - share
  const mix = (a: number, b: number, c: number) =>
    rest * rest * a + 2 * rest * share * b + share * share * c
  const east = rest * (bend.x - from.x) + share * (to.x - bend.x)
  const south = rest * (bend.y - from.y) + share * (to.y - bend.y)
  return {
    x: mix(from.x, bend.x, to.x),
    y: mix(from.y, bend.y, to.y),
    angle: (Math.atan2(east, -south) * 180) / Math.PI,
  }
}

/** Its outline, from one share of its length to another. */
export function outline(wood: Limb, start = 0, end = 1): string {
  const left: Point[] = []
  const right: Point[] = []
  for (let at = 0; at <= segments; at++) {
    const share = start + ((end - start) * at) / segments
    const middle = along(wood, share)
    const half = widthAt(wood, share) / 2
    left.push(ahead(middle, middle.angle - 90, half))
    right.push(ahead(middle, middle.angle + 90, half))
  }
  return `${pathOf([...left, ...right.toReversed()])}Z`
}

/** The cut across it. */
export function cutAcross(wood: Limb, share = 0): string {
  const middle = along(wood, share)
  const half = widthAt(wood, share) / 2 + 4
  return pathOf([ahead(middle, middle.angle - 90, half), ahead(middle, middle.angle + 90, half)])
}

/** Last year's shoots on its outer part, left and right in turn. */
export function shootsOn(
  wood: Limb,
  { count = 4, length = 16, from = 0.4 }: { count?: number; length?: number; from?: number } = {}
): Limb[] {
  return Array.from({ length: count }, (_, at) => {
    const foot = along(wood, from + ((1 - from) * (at + 0.5)) / count)
    const side = at % 2 === 0 ? 1 : -1
    return limb(foot, {
      angle: foot.angle + side * 38,
      length: length * (0.85 + 0.15 * (at % 3)),
      // Shoots turn up to the light.
      turn: -(foot.angle + side * 38) * 0.45,
      width: [1.8, 1.4],
    })
  })
}

export function line({ from, bend, to }: Limb): string {
  return `M${round(from)}Q${round(bend)} ${round(to)}`
}

function widthAt({ width: [first, last] }: Limb, share: number): number {
  // Wood thins quickly at first: the collar.
  return last + (first - last) * (1 - share) ** 1.4
}

function pathOf(points: readonly Point[]): string {
  return `M${points.map(round).join('L')}`
}

function round({ x, y }: Point): string {
  return `${x.toFixed(1)} ${y.toFixed(1)}`
}
