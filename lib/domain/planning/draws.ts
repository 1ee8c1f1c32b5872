/** Ways things may be, drawn from what is known about the minutes of trees. */

import { solveUpper } from './cholesky'
import { effectsOf, type Learned } from './minutes-per-tree'
import type { Kind } from './tree-times'
import { usualMinutesOf } from './usual-minutes'

/** From 0 up to 1. */
export type Chance = () => number

/** One way things may be: the middle of each kind, as a logarithm of minutes, and the spread of its trees. */
export type Possible = { logs: readonly number[]; spread: number }

/** As many as one asks for, of the same kinds in the same order. */
export function possibilities(
  learned: Learned,
  { kinds, day, chance }: { kinds: readonly Kind[]; day: string; chance: Chance }
): () => Possible {
  const asked = kinds.map((kind) => ({
    effects: effectsOf(learned, kind, day),
    usual: Math.log(usualMinutesOf(kind.size)),
  }))
  return () => {
    const away = solveUpper(
      learned.root,
      learned.centre.map(() => normal(chance))
    )
    const drawn = learned.centre.map((value, at) => value + (away[at] ?? 0))
    return {
      logs: asked.map(({ effects, usual }) =>
        effects.reduce((sum, at) => sum + (drawn[at] ?? 0), usual)
      ),
      spread: learned.chance * Math.sqrt(learned.weight / chiSquare(learned.weight, chance)),
    }
  }
}

/** Box and Muller 1958. */
export function normal(chance: Chance): number {
  return Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance())
}

/** Wilson and Hilferty 1931: within a hundredth from five degrees up. */
export function chiSquare(degrees: number, chance: Chance): number {
  const part = 2 / (9 * degrees)
  return degrees * Math.max(0.01, 1 - part + normal(chance) * Math.sqrt(part)) ** 3
}

/** So many trees are drawn one by one; the sum of more is as good as normal. */
const oneByOne = 40

/** Minutes that so many trees of one kind take together. */
export function sumOfTrees(count: number, log: number, spread: number, chance: Chance): number {
  if (count <= oneByOne) {
    let sum = 0
    for (let at = 0; at < count; at++) sum += Math.exp(log + spread * normal(chance))
    return sum
  }
  const mean = Math.exp(log + spread ** 2 / 2)
  const deviation = mean * Math.sqrt(Math.expm1(spread ** 2))
  return Math.max(0, count * mean + Math.sqrt(count) * deviation * normal(chance))
}
