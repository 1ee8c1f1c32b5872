/** A season as it is asked for: every tree that stands and is not done, and what a manager supposes. */

import type { DryDays } from '@/lib/domain/planning/dry-days'
import { dryShareOf } from '@/lib/domain/planning/dry-days'
import type { SeasonAsked } from '@/lib/domain/planning/season'
import { shareAtTrees, shareOfBreaks } from '@/lib/domain/planning/share-at-trees'
import { kindOf, personMinutesOf, treeTimesOf } from '@/lib/domain/planning/tree-times'
import { dryMonthsOf, type Month, monthsBetween } from '@/lib/domain/safety/species-season'
import type { State } from '@/lib/events/state'
import type { View, WorkTimes } from '@/lib/hooks'
import { visitsOf } from './day-asked'

/** What is supposed; a draft of whoever looks. */
export type Supposed = {
  fromMonth: Month
  toMonth: Month
  daysAMonth: number
  hoursADay: number
  dryTenths: number
}

/** A winter of Saturdays. Common practice, no source. */
export const usualSeason: Supposed = {
  fromMonth: 12,
  toMonth: 3,
  daysAMonth: 4,
  hoursADay: 5,
  dryTenths: 6,
}

type SeasonKnown = {
  state: State
  sheet: NonNullable<View['sheet']>
  ground: View['ground']
  times: WorkTimes
  supposed: Supposed
  counted: ReadonlyMap<Month, DryDays>
}

export function seasonAsked(known: SeasonKnown): SeasonAsked {
  const { state, sheet, ground, times, supposed, counted } = known
  const visits = visitsOf(times)
  const sum = (of: 'hereS' | 'breakS') => times.shifts.reduce((all, one) => all + one[of], 0) / 60
  const held = new Set(times.shifts.map(({ shift }) => shift))
  const atTrees = visits
    .filter(({ shift }) => held.has(shift))
    .reduce((all, visit) => all + personMinutesOf(visit), 0)
  return {
    times: treeTimesOf(visits, ground.trees),
    trees: sheet.trees
      .filter(
        ({ no, life }) =>
          life === 'standing' && !['done', 'left_out'].includes(state.work[no]?.state ?? '')
      )
      .map(kindOf),
    months: monthsBetween(supposed.fromMonth, supposed.toMonth),
    dryMonths: dryMonthsOf(state.orchard.houseRules),
    daysAMonth: supposed.daysAMonth,
    dryShare: dryShareOf(counted, supposed.dryTenths / 10),
    hoursADay: supposed.hoursADay * (1 - shareOfBreaks(sum('breakS'), sum('hereS'))),
    shareAtTrees: shareAtTrees(atTrees, sum('hereS') - sum('breakS')).share,
  }
}
