/** A day whose truth is known: people who prune one tree after the other, each taking the time that chance gives it. */

import { type Chance, normal } from '@/lib/domain/planning/draws'
import type { Ahead, BegunTree } from '@/lib/domain/planning/forecast'
import { learnMinutes, spreads } from '@/lib/domain/planning/minutes-per-tree'
import { shareAtTrees } from '@/lib/domain/planning/share-at-trees'
import { type Kind, keyOfKind, type TreeTime } from '@/lib/domain/planning/tree-times'
import { newcomersTake, usualMinutesOf } from '@/lib/domain/planning/usual-minutes'

export const someKinds: readonly Kind[] = [
  { species: 'apple', size: 'medium' },
  { species: 'apple', size: 'small' },
  { species: 'pear', size: 'medium' },
  { species: 'plum', size: 'young' },
]

export type Truth = { minutesOf: (kind: Kind) => number; share: number; chance: number }

/** How an orchard may be, as far from the usual as orchards are said to be. */
export function someTruth(chance: Chance): Truth {
  const pace =
    Math.log(newcomersTake) + spreads.pace * normal(chance) + spreads.day * normal(chance)
  const ofSpecies = new Map(
    someKinds.map(({ species }) => [species, spreads.species * normal(chance)])
  )
  const ofKind = new Map(someKinds.map((kind) => [keyOfKind(kind), spreads.kind * normal(chance)]))
  return {
    share: Math.min(0.95, Math.max(0.3, 0.7 + 0.12 * normal(chance))),
    chance: 0.35 + 0.3 * chance(),
    minutesOf: (kind) =>
      Math.exp(
        Math.log(usualMinutesOf(kind.size)) +
          pace +
          (ofSpecies.get(kind.species) ?? 0) +
          (ofKind.get(keyOfKind(kind)) ?? 0)
      ),
  }
}

export function someTime(truth: Truth, kind: Kind, chance: Chance): number {
  return truth.minutesOf(kind) * Math.exp(truth.chance * normal(chance))
}

type Plan = { people: number; trees: number; minutes: number; seenAfter: number }

/** The day, what could be known of it at `seenAfter`, and how many more trees were done by its end. */
export function liveThrough(
  truth: Truth,
  { people, trees, minutes, seenAfter }: Plan,
  chance: Chance
): { ahead: Ahead; more: number; minutesUntilAllDone: number } {
  const times: TreeTime[] = []
  const inHand: BegunTree[] = []
  const clocks = Array.from({ length: people }, () => 0)
  const waiting = Array.from({ length: trees }, () => kindBy(chance))
  let more = 0
  let atTrees = 0
  const left: BegunTree[] = []
  for (const kind of waiting) {
    const who = clocks.indexOf(Math.min(...clocks))
    const from = clocks[who] ?? 0
    const took = someTime(truth, kind, chance)
    // Walking and tools come with each tree, a little more or less.
    const until = from + (took / truth.share) * (0.5 + chance())
    clocks[who] = until
    atTrees += Math.max(0, Math.min(1, (seenAfter - from) / (until - from))) * took
    if (until <= seenAfter) times.push({ ...kind, shift: 'today', minutes: took })
    else if (until <= minutes) more++
    if (until > seenAfter) {
      const soFar = Math.max(0, ((seenAfter - from) / (until - from)) * took)
      if (from < seenAfter) inHand.push({ ...kind, minutesSoFar: soFar })
      else left.push({ ...kind, minutesSoFar: 0 })
    }
  }
  const ahead: Ahead = {
    learned: learnMinutes(times, {
      unfinished: inHand.map(({ minutesSoFar, ...kind }) => ({
        ...kind,
        shift: 'today',
        minutes: minutesSoFar,
      })),
      kinds: someKinds,
      day: 'today',
    }),
    day: 'today',
    inHand,
    waiting: left,
    people,
    minutesLeft: minutes - seenAfter,
    minutesADay: minutes,
    shareAtTrees: shareAtTrees(atTrees, people * seenAfter),
  }
  return { ahead, more, minutesUntilAllDone: Math.max(...clocks) - seenAfter }
}

function kindBy(chance: Chance): Kind {
  const kind = someKinds[Math.floor(chance() * someKinds.length)]
  if (!kind) throw new Error('There are kinds.')
  return kind
}
