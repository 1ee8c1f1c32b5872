/**
 * How often chance alone brings as many sick neighbours: the sick trees are dealt out anew, each
 * time blindly, but as many as now to every kind of tree, so that a disease of apricots does not
 * look clustered only because the apricots stand together.
 */

import { groupBy } from '@/lib/util/group-by'

import { joinCounts, type Sick } from './join-counts'
import type { Neighbours } from './neighbours'

export type SickGround = {
  neighbours: Neighbours
  sick: Sick
  /** Of each tree a number for its kind. */
  kinds: Uint8Array
}

export type Shuffled = {
  rounds: number
  /** Of how many pairs are both sick, over the rounds. */
  mean: number
  deviation: number
  /** Chances of as many as there are or more, and of as many or fewer. */
  pAtLeast: number
  pAtMost: number
  /** Of Moran's I as large as it is or larger. */
  pMoran: number
}

/** `chance` gives the next number from 0 up to 1; the same numbers give the same answer. */
export function shuffle(ground: SickGround, rounds: number, chance: () => number): Shuffled {
  const { neighbours, sick } = ground
  const strata = strataOf(ground)
  const dealt = new Uint8Array(neighbours.trees)
  const seen = joinCounts(neighbours, sick)
  const moranOf = moranBy(neighbours, sick)
  const seenMoran = moranOf(seen.bothSick, 2 * seen.bothSick + seen.oneSick)
  let [sum, squares, atLeast, atMost, asLarge] = [0, 0, 0, 0, 0]
  for (let round = 0; round < rounds; round++) {
    for (const stratum of strata) draw(stratum, chance)
    const { pairs, ends } = countDealt(neighbours, strata, dealt)
    sum += pairs
    squares += pairs * pairs
    if (pairs >= seen.bothSick) atLeast++
    if (pairs <= seen.bothSick) atMost++
    // Equal arrangements may differ in the last digit.
    if (moranOf(pairs, ends) >= seenMoran - 1e-12) asLarge++
  }
  const mean = sum / rounds
  // What was seen is one of the ways, too.
  const p = (count: number) => (count + 1) / (rounds + 1)
  return {
    rounds,
    mean,
    deviation: Math.sqrt(Math.max(0, squares / rounds - mean * mean)),
    pAtLeast: p(atLeast),
    pAtMost: p(atMost),
    pMoran: p(asLarge),
  }
}

/** What blind dealing within each kind comes to on average, exactly. */
export function expectedBothSick({ neighbours, sick, kinds }: SickGround): number {
  const { trees, starts, others } = neighbours
  const own = new Map<number, { trees: number; sick: number }>()
  for (let at = 0; at < trees; at++) {
    const kind = kinds[at] ?? 0
    const before = own.get(kind) ?? { trees: 0, sick: 0 }
    own.set(kind, { trees: before.trees + 1, sick: before.sick + (sick[at] ?? 0) })
  }
  const chanceOf = (one: number, other: number) => {
    const [a, b] = [own.get(one), own.get(other)]
    if (!a || !b) return 0
    if (one !== other) return (a.sick / a.trees) * (b.sick / b.trees)
    return a.trees < 2 ? 0 : (a.sick * (a.sick - 1)) / (a.trees * (a.trees - 1))
  }
  let sum = 0
  for (let at = 0; at < trees; at++)
    for (let place = starts[at] ?? 0; place < (starts[at + 1] ?? 0); place++)
      sum += chanceOf(kinds[at] ?? 0, kinds[others[place] ?? 0] ?? 0)
  return sum / 2
}

/** The trees of one kind; the first `sick` of them are the sick ones of this round. */
type Stratum = { trees: Uint32Array; sick: number }

function strataOf({ neighbours, sick, kinds }: SickGround): Stratum[] {
  const all = Array.from({ length: neighbours.trees }, (_, at) => at)
  return [...groupBy(all, (at) => kinds[at]).values()].map((trees) => ({
    trees: Uint32Array.from(trees),
    sick: trees.filter((at) => sick[at]).length,
  }))
}

/** Only the front is shuffled, which is all that is asked for. */
function draw({ trees, sick }: Stratum, chance: () => number): void {
  for (let front = 0; front < sick; front++) {
    const from = front + Math.floor(chance() * (trees.length - front))
    const drawn = trees[from] ?? 0
    trees[from] = trees[front] ?? 0
    trees[front] = drawn
  }
}

/** Pairs that are both sick, and all ends of joins at sick trees. Leaves `dealt` clean. */
function countDealt(
  { starts, others }: Neighbours,
  strata: readonly Stratum[],
  dealt: Uint8Array
): { pairs: number; ends: number } {
  let [pairs, ends] = [0, 0]
  // Each tree looks only for those that came before it, so that a pair is met once.
  for (const { trees, sick } of strata)
    for (let front = 0; front < sick; front++) {
      const at = trees[front] ?? 0
      const [from, to] = [starts[at] ?? 0, starts[at + 1] ?? 0]
      for (let place = from; place < to; place++) pairs += dealt[others[place] ?? 0] ?? 0
      ends += to - from
      dealt[at] = 1
    }
  for (const { trees, sick } of strata)
    for (let front = 0; front < sick; front++) dealt[trees[front] ?? 0] = 0
  return { pairs, ends }
}

/** Moran's I of trees that are sick or not, from two counts alone. */
function moranBy(
  { trees, others }: Neighbours,
  sick: Sick
): (pairs: number, ends: number) => number {
  const s0 = others.length
  const p = sick.reduce((sum, one) => sum + one, 0) / trees
  return (pairs, ends) => (2 * pairs - 2 * p * ends + p * p * s0) / (s0 * p * (1 - p))
}
