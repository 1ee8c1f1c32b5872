/**
 * A crown as a phone photographs it, of which is known what is sky: limbs that fork down to twigs thinner than a
 * pixel, a sky with a glow and clouds, and what lens, hand and file do to the light. Invented, but nothing is kind.
 */

import { chanceFrom } from '@/lib/util/chance'
import { asJpeg } from './a-jpeg'

export type Crown = {
  side: number
  /** How often limbs fork, from bare to dense. */
  forks: number
  /** How much brighter the sky is near the sun, which stands behind the trunk. */
  glow?: number
  /** 0 blue, 1 all cloud. */
  cloud?: number
  /** What the bark gives back of the light, at most. */
  bark?: number
  /** Of the sky's middle: 1 is just white. */
  exposure?: number
  /** Share of all light that strays over the picture. */
  veil?: number
  /** Ghosts of the sun in the lens. */
  flare?: number
  /** How far light spreads, and the hand moves, in pixels. */
  blurPx?: number
  shakePx?: number
  vignette?: number
  noise?: number
  /** Of the file, as its writer counts it. */
  quality?: number
  seed?: number
}

type Chance = () => number
export type Photo = { width: number; height: number; data: Uint8ClampedArray; gap: number }

export function photographedCrown(crown: Crown): Photo {
  const { side } = crown
  const chance = chanceFrom(crown.seed ?? 1)
  const covered = crownOf(crown, chance)
  const light = lightOf(crown, covered, chance)
  for (const channel of light) {
    if (crown.blurPx) spread(channel, side, crown.blurPx)
    if (crown.shakePx) shake(channel, side, crown.shakePx)
  }
  addVeil(crown, light)
  const data = developed(crown, light, chance)
  return {
    width: side,
    height: side,
    data: asJpeg(data, side, crown.quality ?? 85),
    gap: gapOf(covered, side),
  }
}

/** The share of sky in the circle. */
function gapOf(covered: Float32Array, side: number): number {
  let [open, all] = [0, 0]
  for (let at = 0; at < covered.length; at++) {
    const [x, y] = [(at % side) + 0.5 - side / 2, Math.floor(at / side) + 0.5 - side / 2]
    if (x * x + y * y >= (side / 2) ** 2) continue
    open += 1 - (covered[at] ?? 0)
    all++
  }
  return open / all
}

type Branch = { x: number; y: number; angle: number; width: number; left: number }

/** Limbs from the trunk outward. Where one forks, the sections of its parts add up to its own (the pipe model). */
function crownOf({ side, forks }: Crown, chance: Chance): Float32Array {
  const covered = new Float32Array(side * side)
  const foot = { x: side * (0.42 + 0.16 * chance()), y: side * (0.42 + 0.16 * chance()) }
  drawStroke(covered, side, {
    from: foot,
    to: { x: foot.x + 1, y: foot.y + side * 0.03 },
    width: side * 0.1,
  })
  const limbs = 4 + Math.floor(chance() * 3)
  const waiting: Branch[] = Array.from({ length: limbs }, (_, at) => ({
    ...foot,
    angle: ((at + 0.6 * chance()) / limbs) * 2 * Math.PI,
    width: side * (0.025 + 0.02 * chance()),
    left: forks,
  }))
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const length = side * (0.05 + 0.07 * chance()) * (0.5 + next.left / forks)
    const bend = next.angle + 0.3 * (chance() - 0.5)
    const to = { x: next.x + length * Math.cos(bend), y: next.y + length * Math.sin(bend) }
    drawStroke(covered, side, { from: next, to, width: next.width })
    if (next.left === 0) continue
    const share = 0.25 + 0.5 * chance()
    for (const [part, turn] of [
      [share, 0.3 + 0.6 * chance()],
      [1 - share, -0.3 - 0.6 * chance()],
    ] as const)
      waiting.push({
        ...to,
        angle: bend + turn,
        width: next.width * Math.sqrt(part),
        left: next.left - 1,
      })
  }
  return covered
}

type Spot = { x: number; y: number }

/** Each pixel by how much of it is covered: of a twig thinner than a pixel, so much less. */
function drawStroke(
  covered: Float32Array,
  side: number,
  stroke: { from: Spot; to: Spot; width: number }
): void {
  const { from, to, width } = stroke
  const reach = width / 2 + 1
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  const square = dx * dx + dy * dy
  for (
    let y = Math.max(0, Math.floor(Math.min(from.y, to.y) - reach));
    y < Math.min(side, Math.max(from.y, to.y) + reach);
    y++
  )
    for (
      let x = Math.max(0, Math.floor(Math.min(from.x, to.x) - reach));
      x < Math.min(side, Math.max(from.x, to.x) + reach);
      x++
    ) {
      const [px, py] = [x + 0.5 - from.x, y + 0.5 - from.y]
      const along = Math.min(1, Math.max(0, (px * dx + py * dy) / square))
      const away = Math.hypot(px - along * dx, py - along * dy)
      const own = Math.min(width, 1, Math.max(0, width / 2 + 0.5 - away))
      const at = y * side + x
      covered[at] = 1 - (1 - (covered[at] ?? 0)) * (1 - own)
    }
}

/** Light of each colour before the lens, with 1 for a middling sky. */
function lightOf(crown: Crown, covered: Float32Array, chance: Chance): Float32Array[] {
  const { side, glow = 0, cloud = 0, bark = 0.06 } = crown
  const clouds = smoothNoise(side, side / 4, chance)
  const grain = smoothNoise(side, side / 24, chance)
  const sun = { x: side * 0.5 + side * 0.1 * (chance() - 0.5), y: side * 0.5 }
  const [blue, grey] = [[0.36, 0.55, 1] as const, [0.95, 0.98, 1] as const]
  return [0, 1, 2].map((colour) => {
    const channel = new Float32Array(side * side)
    for (let at = 0; at < channel.length; at++) {
      const [x, y] = [at % side, Math.floor(at / side)]
      const near = Math.exp(-Math.hypot(x - sun.x, y - sun.y) / (0.22 * side))
      const grey01 = Math.min(1, Math.max(0, cloud * 1.6 - 0.3 + 0.6 * ((clouds[at] ?? 0) - 0.5)))
      const sky =
        ((blue[colour] ?? 0) * (1 - grey01) +
          (grey[colour] ?? 0) * grey01 * (0.7 + 0.5 * (clouds[at] ?? 0))) *
        (0.85 + 0.3 * (y / side)) *
        (1 + glow * near)
      const wood =
        bark * (0.3 + 0.7 * (grain[at] ?? 0)) * (colour === 2 ? 0.75 : 1) * (1 + 0.5 * glow * near)
      channel[at] = sky * (1 - (covered[at] ?? 0)) + wood * (covered[at] ?? 0)
    }
    return channel
  })
}

/** Between 0 and 1, alike over about so many pixels. */
function smoothNoise(side: number, gradePx: number, chance: Chance): Float32Array {
  const across = Math.ceil(side / gradePx) + 2
  const grid = Float32Array.from({ length: across * across }, chance)
  const noise = new Float32Array(side * side)
  for (let at = 0; at < noise.length; at++) {
    const [x, y] = [(at % side) / gradePx, Math.floor(at / side) / gradePx]
    const [left, top] = [Math.floor(x), Math.floor(y)]
    const [u, v] = [ease(x - left), ease(y - top)]
    const of = (column: number, row: number) => grid[(top + row) * across + left + column] ?? 0
    noise[at] =
      (of(0, 0) * (1 - u) + of(1, 0) * u) * (1 - v) + (of(0, 1) * (1 - u) + of(1, 1) * u) * v
  }
  return noise
}

function ease(share: number): number {
  return share * share * (3 - 2 * share)
}

/** Three passes of a box are nearly a bell. */
function spread(channel: Float32Array, side: number, px: number): void {
  for (let pass = 0; pass < 3; pass++) {
    smear(channel, side, { x: px, y: 0 })
    smear(channel, side, { x: 0, y: px })
  }
}

function shake(channel: Float32Array, side: number, px: number): void {
  smear(channel, side, { x: px * 0.8, y: px * 0.6 })
}

/** Each pixel the mean along a line through it. */
function smear(channel: Float32Array, side: number, over: Spot): void {
  const before = channel.slice()
  const steps = Math.max(2, Math.ceil(Math.hypot(over.x, over.y) * 2))
  const at = (x: number, y: number) =>
    before[Math.min(side - 1, Math.max(0, y)) * side + Math.min(side - 1, Math.max(0, x))] ?? 0
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      let sum = 0
      for (let step = 0; step < steps; step++) {
        const part = (step + 0.5) / steps - 0.5
        const [fx, fy] = [x + part * over.x, y + part * over.y]
        const [left, top] = [Math.floor(fx), Math.floor(fy)]
        const [u, v] = [fx - left, fy - top]
        sum +=
          (at(left, top) * (1 - u) + at(left + 1, top) * u) * (1 - v) +
          (at(left, top + 1) * (1 - u) + at(left + 1, top + 1) * u) * v
      }
      channel[y * side + x] = sum / steps
    }
}

/** Light that strays in the lens: evenly, and as ghosts in a row through the middle. */
function addVeil({ side, veil = 0, flare = 0 }: Crown, light: readonly Float32Array[]): void {
  const ghosts = [0.25, 0.45, 0.8].map((share, at) => ({
    x: side * share,
    y: side * (0.3 + 0.4 * share),
    r: side * (0.05 + 0.04 * at),
  }))
  for (const channel of light) {
    const mean = channel.reduce((sum, own) => sum + own, 0) / channel.length
    for (let at = 0; at < channel.length; at++) {
      const [x, y] = [at % side, Math.floor(at / side)]
      const ghost = ghosts.filter((one) => Math.hypot(x - one.x, y - one.y) < one.r).length
      channel[at] = (channel[at] ?? 0) * (1 - veil) + mean * veil + flare * ghost
    }
  }
}

/** As the camera writes it: the lens's dark edge, exposure, noise of few photons, and the curve of sRGB (IEC 61966-2-1). */
function developed(
  { side, vignette = 0, exposure = 0.8, noise = 0 }: Crown,
  light: readonly Float32Array[],
  chance: Chance
): Uint8ClampedArray {
  const data = new Uint8ClampedArray(side * side * 4)
  for (let at = 0; at < side * side; at++) {
    const away = Math.hypot((at % side) - side / 2, Math.floor(at / side) - side / 2) / (side / 2)
    const left = 1 - vignette * Math.min(1, away) ** 2
    light.forEach((channel, colour) => {
      const own = exposure * left * (channel[at] ?? 0)
      const grainy = own + noise * Math.sqrt(own + 0.01) * (chance() + chance() + chance() - 1.5)
      data[at * 4 + colour] = 255 * curve(grainy)
    })
    data[at * 4 + 3] = 255
  }
  return data
}

function curve(light: number): number {
  const own = Math.min(1, Math.max(0, light))
  return own <= 0.0031308 ? 12.92 * own : 1.055 * own ** (1 / 2.4) - 0.055
}
