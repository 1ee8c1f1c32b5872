/**
 * How many trees will be done by the end of the shift, and how long the rest takes: the day is gone through some
 * hundred times, each time with other minutes that fit what was seen, and the middle eight of ten are told.
 */

import { groupBy } from '@/lib/util/group-by'

import { type Chance, normal, type Possible, possibilities, sumOfTrees } from './draws'
import { middleOf } from './middle-of'
import type { Learned, Range } from './minutes-per-tree'
import type { ShareAtTrees } from './share-at-trees'
import { type Kind, keyOfKind } from './tree-times'

/** A tree that somebody is at, or that was left half done, with what it has taken so far. */
export type BegunTree = Kind & { minutesSoFar: number }

export type Ahead = {
  learned: Learned
  /** The shift. */
  day: string
  /** Trees that somebody is at. */
  inHand: readonly BegunTree[]
  /** Trees that can be begun, in no order. */
  waiting: readonly BegunTree[]
  people: number
  /** Until the end, breaks taken out. */
  minutesLeft: number
  /** Of a whole day like this one. */
  minutesADay: number
  shareAtTrees: ShareAtTrees
}

export type Forecast = {
  /** More trees by the end. */
  trees: Range
  /** Hours of one person at trees until all of them are done. */
  hours: Range
  /** Minutes from now until all are done, as if the shift had no end; null without people. */
  allDone: Range | null
  /** Days like this one after today; 0 to 0: today. Null without people. */
  moreDays: Range | null
}

const turns = 400

/** A tree whose kind is a place in a list. */
type Tree = { kind: number; soFar: number }

export function forecast(ahead: Ahead, chance: Chance): Forecast {
  const { people, minutesLeft, minutesADay } = ahead
  const kinds = [...groupBy([...ahead.inHand, ...ahead.waiting], keyOfKind).entries()]
  const kindAt = new Map(kinds.map(([key], at) => [key, at]))
  const placed = (trees: readonly BegunTree[]): Tree[] =>
    trees.map((tree) => ({ kind: kindAt.get(keyOfKind(tree)) ?? 0, soFar: tree.minutesSoFar }))
  const [inHand, waiting] = [placed(ahead.inHand), placed(ahead.waiting)]
  const whole = kinds.map(
    (_, at) => waiting.filter((tree) => tree.kind === at && !tree.soFar).length
  )
  const begun = [...inHand, ...waiting.filter(({ soFar }) => soFar > 0)]
  const drawPossible = possibilities(ahead.learned, {
    kinds: kinds.flatMap(([, [first]]) => first ?? []),
    day: ahead.day,
    chance,
  })

  const sumOfAll = ({ possible }: Turn) =>
    whole.reduce(
      (sum, count, at) => sum + sumOfTrees(count, possible.logs[at] ?? 0, possible.spread, chance),
      0
    )
  const seen = Array.from({ length: turns }, () => {
    const share = drawShare(ahead.shareAtTrees, chance)
    const turn = { possible: drawPossible(), chance }
    const until = minutesLeft * share
    const day = goThrough({ inHand, waiting, people, until }, turn)
    const minutes =
      day.minutes ?? sumOfAll(turn) + begun.reduce((sum, tree) => sum + restOf(tree, turn), 0)
    const wall = (day.lasts ?? minutes / people) / share
    return {
      trees: day.trees,
      hours: minutes / 60,
      wall,
      days: Math.max(0, (wall - minutesLeft) / minutesADay),
    }
  })
  const range = (of: 'trees' | 'hours' | 'wall' | 'days') => middleOf(seen.map((one) => one[of]))
  const isAhead = people > 0 && minutesADay > 0
  return {
    trees: range('trees'),
    hours: range('hours'),
    allDone: isAhead ? range('wall') : null,
    moreDays: isAhead ? range('days') : null,
  }
}

function drawShare({ share, spread }: ShareAtTrees, chance: Chance): number {
  return Math.min(1, Math.max(0.1, share + spread * normal(chance)))
}

type Turn = { possible: Possible; chance: Chance }
type Going = {
  inHand: readonly Tree[]
  waiting: readonly Tree[]
  people: number
  /** Minutes at trees until the end, of each. */
  until: number
}

/** So many trees are gone through one by one to the last; of more, the sum says as much. */
const steppedThrough = 400

type GoneThrough = { trees: number; minutes: number | null; lasts: number | null }

/**
 * Everybody who is there, one tree after the other, any of those that wait. A pair counts as two people, each at
 * half of its trees. With minutes at trees in all and until the last is done, unless there are too many.
 */
function goThrough({ inHand, waiting, people, until }: Going, turn: Turn): GoneThrough {
  const toTheLast = people > 0 && waiting.length <= steppedThrough
  const clocks = Array.from({ length: people }, () => 0)
  const queue = [...waiting]
  let [trees, minutes] = [0, 0]
  for (let taken = 0; taken < inHand.length + queue.length; taken++) {
    const who = firstFree(clocks)
    const from = clocks[who]
    if (from === undefined || (from > until && !toTheLast)) break
    const tree = inHand[taken] ?? drawNext(queue, taken - inHand.length, turn.chance)
    const took = restOf(tree, turn)
    clocks[who] = from + took
    minutes += took
    if (from + took <= until) trees++
  }
  return toTheLast
    ? { trees, minutes, lasts: Math.max(0, ...clocks) }
    : { trees, minutes: null, lasts: null }
}

function firstFree(clocks: readonly number[]): number {
  let first = 0
  for (let who = 1; who < clocks.length; who++) {
    if ((clocks[who] ?? 0) < (clocks[first] ?? 0)) first = who
  }
  return first
}

/** One of those from here on, each as likely as the others; it changes places with the one that stood here. */
function drawNext(queue: Tree[], here: number, chance: Chance): Tree {
  const there = here + Math.floor(chance() * (queue.length - here))
  const [one, other] = [queue[here], queue[there]]
  if (!one || !other) return { kind: 0, soFar: 0 }
  queue[there] = one
  queue[here] = other
  return other
}

/** What is left of a tree: how long one takes that has taken so much already. */
function restOf({ kind, soFar }: Tree, { possible, chance }: Turn): number {
  const log = possible.logs[kind] ?? 0
  for (let tries = 0; tries < 20; tries++) {
    const whole = Math.exp(log + possible.spread * normal(chance))
    if (whole > soFar) return whole - soFar
  }
  // It has taken longer than such trees do: as long again as a tree is wide of the middle.
  return soFar * possible.spread
}
