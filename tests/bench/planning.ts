/** What is reckoned ahead in a big orchard: the rest of a day, a plan for twenty people, a season. */

import type { Tree } from '@/lib/domain/orchard/types'
import { type DayAsked, dayAhead } from '@/lib/domain/planning/day-ahead'
import { seasonOf } from '@/lib/domain/planning/season'
import { type PlanAsked, planShift } from '@/lib/domain/planning/shift-plan'
import type { PlanPerson } from '@/lib/domain/planning/shift-teams'
import { teamsOf } from '@/lib/domain/planning/shift-teams'
import type { TreeTime } from '@/lib/domain/planning/tree-times'
import { chanceFrom } from '@/lib/util/chance'
import { nearTrees } from '../../components/planning/near-trees'
import { atMost, type Figure, ms, share } from './figures'

const rounds = 10
const size = 10_000
const species = ['apple', 'pear', 'plum', 'cherry', 'peach'] as const
const sizes = ['young', 'small', 'medium', 'large'] as const

export function benchPlanning(): Figure[] {
  return [
    atMost(
      'Rest of the day, 20 people, 10,000 trees, 800 visits (in a worker)',
      timed(day),
      2_000,
      ms
    ),
    atMost(
      'Plan for 20 people, 10,000 trees, every second asks for a ladder',
      timed(plan),
      500,
      ms
    ),
    atMost('Season of 10,000 trees', timed(season), 500, ms),
  ]
}

/** The median. */
function timed(make: () => () => unknown): number {
  const run = make()
  const times = Array.from({ length: rounds }, () => {
    const from = performance.now()
    run()
    return performance.now() - from
  })
  return share(times, 0.5)
}

function kindAt(at: number) {
  return { species: species[at % 5] ?? 'apple', size: sizes[at % 4] ?? null } as const
}

function someTimes(): TreeTime[] {
  const chance = chanceFrom(1)
  return Array.from({ length: 800 }, (_, at) => ({
    ...kindAt(at),
    shift: `${at % 20}`,
    minutes: 20 + 60 * chance(),
  }))
}

function day() {
  const asked: DayAsked = {
    day: '0',
    times: someTimes(),
    unfinished: [],
    blocks: [1, 2, 3, 4].map((block) => ({
      block,
      inHand: Array.from({ length: 5 }, (_, at) => ({ ...kindAt(at), minutesSoFar: 10 })),
      waiting: Array.from({ length: size / 4 }, (_, at) => ({ ...kindAt(at), minutesSoFar: 0 })),
      people: 5,
    })),
    people: 20,
    minutesLeft: 240,
    minutesADay: 360,
    atTreesMinutes: 3000,
    hereMinutes: 4000,
  }
  return () => dayAhead(asked)
}

function season() {
  const trees = Array.from({ length: size }, (_, at) => kindAt(at))
  const times = someTimes()
  return () =>
    seasonOf({
      times,
      trees,
      months: [12, 1, 2, 3],
      dryMonths: { cherry: [7, 8] },
      daysAMonth: 8,
      dryShare: () => 0.6,
      hoursADay: 5,
      shareAtTrees: 0.7,
    })
}

function plan() {
  const block = {
    no: 1,
    code: 'A',
    name: 'A',
    rowSpacingM: 5,
    treeSpacingM: 4,
    bearingDeg: 0,
    firstTree: null,
    taggedEnd: 'low',
  } as const
  const trees = Array.from({ length: size }, (_, at): Tree => {
    const [row, place] = [Math.floor(at / 100) + 1, (at % 100) + 1]
    const position = { lat: 48 + place * 0.000036, lon: 2 + row * 0.000067 }
    const measures = { sizeClass: 'medium', plantedYear: null, heightCm: 300, trunkCm: 20 } as const
    const rest = { cultivar: null, asksSaw: false, life: 'standing' } as const
    return { no: at + 1, block: 1, row, place, species: 'apple', position, ...measures, ...rest }
  })
  const ground = {
    trees: new Map(trees.map((tree) => [tree.no, tree])),
    blocks: new Map([[1, block]]),
  }
  const people = Array.from(
    { length: 20 },
    (_, at): PlanPerson => ({
      ...{ id: `${at}`, handSaw: at % 2 === 0, ladder: at % 2 === 0, prunesAlone: at % 3 > 0 },
      ...{ isMinor: false, guardian: null, hasSaw: true, hasLadder: true },
    })
  )
  return () => {
    const { teams } = teamsOf(people)
    const asked: PlanAsked = {
      teams,
      loads: teams.map(() => 0),
      from: teams.map(() => null),
      trees: trees.map(({ no, row, place }) => ({
        ...{ no, block: 1, row, place, saw: false, ladder: no % 2 === 0, marked: no % 3 === 0 },
        ...{ isSick: no % 50 === 0, minutes: 40 },
      })),
      // Long enough for all of them: the most there is to do.
      minutes: 1_000_000,
      near: nearTrees(ground, 6),
      held: [],
    }
    return planShift(asked)
  }
}
