/** What can be said of a day from what it has seen: the minutes of each kind of tree, and when blocks and all will be done. */

import { chanceFrom } from '@/lib/util/chance'
import { groupBy } from '@/lib/util/group-by'

import { type BegunTree, type Forecast, forecast } from './forecast'
import { learnMinutes, type MinutesOfKind, minutesOf, treesNeeded } from './minutes-per-tree'
import { shareAtTrees } from './share-at-trees'
import { type Kind, keyOfKind, type TreeTime } from './tree-times'

export type BlockAsked = {
  block: number
  inHand: readonly BegunTree[]
  waiting: readonly BegunTree[]
  /** At its trees now. */
  people: number
}

export type DayAsked = {
  /** The shift. */
  day: string
  times: readonly TreeTime[]
  unfinished: readonly TreeTime[]
  blocks: readonly BlockAsked[]
  people: number
  /** Both without breaks. */
  minutesLeft: number
  minutesADay: number
  /** Of all together, so far today. */
  atTreesMinutes: number
  hereMinutes: number
}

export type BlockAhead = Forecast & { block: number; trees: Forecast['trees']; left: number }

export type DayAhead =
  | { state: 'not_enough'; trees: number; needed: number }
  | {
      state: 'known'
      /** Finished trees that it rests on. */
      trees: number
      /** Those of which most were finished first. */
      kinds: readonly (Kind & { minutes: MinutesOfKind })[]
      share: number
      all: Forecast
      left: number
      blocks: readonly BlockAhead[]
    }

/** Any seed would do, as long as two tablets say the same. */
const seed = 1

export function dayAhead(asked: DayAsked): DayAhead {
  const chance = chanceFrom(seed)
  const { times, unfinished, blocks, day } = asked
  if (times.length < treesNeeded) {
    return { state: 'not_enough', trees: times.length, needed: treesNeeded }
  }
  const inHand = blocks.flatMap((block) => block.inHand)
  const waiting = blocks.flatMap((block) => block.waiting)
  const kinds = [...groupBy([...inHand, ...waiting, ...times], keyOfKind).values()].flatMap(
    ([first]) => (first ? [{ species: first.species, size: first.size }] : [])
  )
  const learned = learnMinutes(times, { unfinished, kinds, day })
  const share = shareAtTrees(asked.atTreesMinutes, asked.hereMinutes)
  const { people, minutesLeft, minutesADay } = asked
  const common = { learned, day, minutesLeft, minutesADay, shareAtTrees: share }
  const finished = (kind: Kind) => learned.treesOfKind.get(keyOfKind(kind)) ?? 0
  return {
    state: 'known',
    trees: times.length,
    kinds: kinds
      .toSorted((a, b) => finished(b) - finished(a))
      .map((kind) => ({ ...kind, minutes: minutesOf(learned, kind, day) })),
    share: share.share,
    all: forecast({ ...common, people, inHand, waiting }, chance),
    left: inHand.length + waiting.length,
    blocks: blocks.map((block) => ({
      ...forecast({ ...common, ...block }, chance),
      block: block.block,
      left: block.inHand.length + block.waiting.length,
    })),
  }
}
