/** Pictures of crowns against the sky whose openness is known, as a camera would spoil them. */

import { chanceFrom } from '@/lib/util/chance'

export type Canopy = {
  side: number
  /** How much of the circle is sky. */
  gap: number
  sky: readonly [red: number, green: number, blue: number]
  bark: readonly [red: number, green: number, blue: number]
  /** Deviation of the noise in each colour. */
  noise?: number
  /** Share of the light that is lost at the circle's edge. */
  vignette?: number
  /** Stray light added over a wide patch, at its brightest. */
  glare?: number
  /** A white disc with a halo: its radius as a share of the side. */
  sun?: number
  seed?: number
}

export const blueSky = [120, 165, 225] as const
export const greySky = [205, 208, 210] as const
export const whiteSky = [255, 255, 255] as const
export const darkBark = [48, 40, 34] as const
export const paleBark = [104, 94, 84] as const

const anyChance = chanceFrom(99)

type Drawn = { width: number; height: number; data: Uint8ClampedArray; gap: number }

/** Limbs are straight bars laid down at random until so much of the circle is covered; `gap` is what is left. */
export function canopyPicture(canopy: Canopy): Drawn {
  const { side } = canopy
  const chance = chanceFrom(canopy.seed ?? 1)
  const isWood = limbs(canopy, chance)
  const data = new Uint8ClampedArray(side * side * 4)
  const lamp = { x: side * (0.3 + 0.4 * chance()), y: side * (0.3 + 0.4 * chance()) }
  let [open, all] = [0, 0]
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const away = Math.hypot(x + 0.5 - side / 2, y + 0.5 - side / 2) / (side / 2)
      const at = y * side + x
      if (away < 1) {
        all++
        if (!isWood[at]) open++
      }
      const lost = 1 - (canopy.vignette ?? 0) * away * away
      const toLamp = Math.hypot(x - lamp.x, y - lamp.y) / side
      const stray = (canopy.glare ?? 0) * Math.exp(-((toLamp / 0.25) ** 2))
      const blaze = canopy.sun ? sunAt(toLamp, canopy.sun) : 0
      for (let colour = 0; colour < 3; colour++) {
        const own = (isWood[at] ? canopy.bark : canopy.sky)[colour] ?? 0
        data[at * 4 + colour] =
          own * Math.max(0.1, lost) + stray + blaze + normal(chance) * (canopy.noise ?? 0)
      }
      data[at * 4 + 3] = 255
    }
  return { width: side, height: side, data, gap: open / all }
}

function limbs({ side, gap }: Canopy, chance: () => number): Uint8Array {
  const isWood = new Uint8Array(side * side)
  let covered = 0
  const goal = (1 - gap) * side * side
  while (covered < goal) {
    const angle = chance() * Math.PI
    const [x0, y0] = [chance() * side, chance() * side]
    // From twigs of a few pixels to limbs.
    const width = 2 + chance() ** 3 * side * 0.08
    const length = side * (0.2 + 0.5 * chance())
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)]
    for (let along = 0; along < length && covered < goal; along += 0.5)
      for (let across = -width / 2; across <= width / 2; across += 0.5) {
        const x = Math.floor(x0 + along * cos - across * sin)
        const y = Math.floor(y0 + along * sin + across * cos)
        if (x < 0 || y < 0 || x >= side || y >= side || isWood[y * side + x]) continue
        isWood[y * side + x] = 1
        covered++
      }
  }
  return isWood
}

function sunAt(away: number, radius: number): number {
  return away < radius ? 255 : 200 * Math.exp(-(away - radius) / (1.5 * radius))
}

/** Nearly normal: twelve chances added up, drawn beforehand, since a picture needs half a million. */
const normals = Float32Array.from({ length: 8192 }, () => {
  let sum = -6
  for (let draw = 0; draw < 12; draw++) sum += anyChance()
  return sum
})

function normal(chance: () => number): number {
  return normals[Math.floor(chance() * normals.length)] ?? 0
}
