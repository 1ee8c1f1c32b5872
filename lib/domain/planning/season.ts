/** What a season asks for: hours by species, the months each may be pruned in, and how many people a day that takes. */

import { chanceFrom } from '@/lib/util/chance'
import { groupBy } from '@/lib/util/group-by'

import type { Species } from '../orchard/types'
import type { DryMonths, Month } from '../safety/species-season'
import { possibilities, sumOfTrees } from './draws'
import { middleOf } from './middle-of'
import { learnMinutes, type Range } from './minutes-per-tree'
import { type Kind, keyOfKind, type TreeTime } from './tree-times'

export type SeasonAsked = {
  times: readonly TreeTime[]
  /** All that are to be pruned. */
  trees: readonly Kind[]
  /** The months of the orchard's own season, for species that have none of their own. */
  months: readonly Month[]
  dryMonths: DryMonths
  /** Days of work that a month has, and which part of them is dry. */
  daysAMonth: number
  dryShare: (month: Month) => number
  /** Of each person on such a day, breaks taken out. */
  hoursADay: number
  shareAtTrees: number
}

export type SpeciesSeason = {
  species: Species
  trees: number
  /** Of one person, with walking and tools. */
  hours: Range
  months: readonly Month[]
  /** Dry days of work in these months. */
  days: number
}

export type Season = {
  species: readonly SpeciesSeason[]
  trees: number
  hours: Range
  /** Dry days of work in all these months. */
  days: number
  /** On each of these days; null where some species has no day at all. */
  people: Range | null
}

const turns = 400
/** Any seed would do, as long as two laptops say the same. */
const seed = 1
/** No shift: as a day that nobody has seen yet. */
const anotherDay = ''

export function seasonOf(asked: SeasonAsked): Season {
  const bySpecies = [...groupBy(asked.trees, ({ species }) => species)]
  const monthsOf = (species: Species) => asked.dryMonths[species] ?? asked.months
  const daysIn = (months: readonly Month[]) =>
    months.reduce((sum, month) => sum + asked.daysAMonth * asked.dryShare(month), 0)
  const drawn = drawHours(asked, bySpecies)
  const whole = [...new Set(bySpecies.flatMap(([species]) => monthsOf(species)))]
  const windows = bySpecies.map(([species]) => monthsOf(species))
  const people = drawn.map((hours) =>
    peopleFor(hours, { windows, hoursIn: (months) => daysIn(months) * asked.hoursADay })
  )
  return {
    species: bySpecies.map(([species, trees], at) => ({
      species,
      trees: trees.length,
      hours: middleOf(drawn.map((hours) => hours[at] ?? 0)),
      months: monthsOf(species),
      days: daysIn(monthsOf(species)),
    })),
    trees: asked.trees.length,
    hours: middleOf(drawn.map((hours) => hours.reduce((sum, one) => sum + one, 0))),
    days: daysIn(whole),
    people: people.every(Number.isFinite) ? middleOf(people) : null,
  }
}

/** Hours of each species, in so many ways as they may come out. */
function drawHours(
  { times, trees, shareAtTrees }: SeasonAsked,
  bySpecies: readonly (readonly [Species, readonly Kind[]])[]
): number[][] {
  const chance = chanceFrom(seed)
  const kinds = [...groupBy(trees, keyOfKind)].flatMap(([key, [kind]]) =>
    kind ? [{ key, kind }] : []
  )
  const placeOf = new Map(kinds.map(({ key }, at) => [key, at]))
  const counts = bySpecies.map(([, own]) =>
    [...groupBy(own, keyOfKind)].map(([key, all]) => [placeOf.get(key) ?? 0, all.length] as const)
  )
  const asked = { kinds: kinds.map(({ kind }) => kind), day: anotherDay }
  const learned = learnMinutes(times, { unfinished: [], ...asked })
  const drawPossible = possibilities(learned, { ...asked, chance })
  return Array.from({ length: turns }, () => {
    const { logs, spread } = drawPossible()
    return counts.map(
      (own) =>
        own.reduce(
          (sum, [kind, count]) => sum + sumOfTrees(count, logs[kind] ?? 0, spread, chance),
          0
        ) /
        60 /
        shareAtTrees
    )
  })
}

type Calendar = {
  windows: readonly (readonly Month[])[]
  /** Of one person who comes on every dry day of these months. */
  hoursIn: (months: readonly Month[]) => number
}

/**
 * The fewest people a day for whom everything finds its months: whatever must be done within some months must fit in
 * them, for any choice of windows (Hall's condition for a flow from species to months).
 */
export function peopleFor(hours: readonly number[], { windows, hoursIn }: Calendar): number {
  const distinct = [...new Map(windows.map((months) => [months.join(), months])).values()]
  let most = 0
  for (let choice = 1; choice < 2 ** distinct.length; choice++) {
    const months = new Set(distinct.flatMap((window, at) => ((choice >> at) & 1 ? window : [])))
    const within = hours.reduce(
      (sum, one, at) => sum + (windows[at]?.every((month) => months.has(month)) ? one : 0),
      0
    )
    if (within > 0) most = Math.max(most, within / hoursIn([...months]))
  }
  return most
}
