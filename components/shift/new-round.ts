/** A round that is about to be opened. */

import { type Species, species } from '@/lib/domain/orchard/types'
import type { ArgsOf } from '@/lib/events/commands'
import type { Round } from '@/lib/events/state'
import type { View } from '@/lib/hooks'

export const roundKinds = ['winter', 'summer', 'after_harvest', 'training'] as const

export type NewRound = {
  kind: Round['kind']
  season: string
  species: string[]
  from: string
  to: string
}

export type RoundLack = 'season' | 'species' | 'days'

export function roundLacks({ season, species, from, to }: NewRound): RoundLack[] {
  const lacks: RoundLack[] = []
  if (!/^2[01]\d\d$/.test(season)) lacks.push('season')
  if (species.length === 0) lacks.push('species')
  if (from === '' || to === '' || from > to) lacks.push('days')
  return lacks
}

export function roundArgs(round: NewRound): ArgsOf<'open_round'> {
  return { ...round, season: Number(round.season) }
}

/** The kinds of trees that stand in this orchard. */
export function speciesHere({ sheet }: Pick<View, 'sheet'>): Species[] {
  const here = new Set((sheet?.trees ?? []).map((tree) => tree.species))
  return species.filter((one) => here.has(one))
}

/** All kinds that are here, over the three months from today: a lead changes what is not so. */
export function proposedRound(today: string, here: readonly string[]): NewRound {
  const [year = 0, month = 1] = today.split('-').map(Number)
  const end = new Date(`${today}T12:00:00Z`)
  end.setUTCMonth(end.getUTCMonth() + 3)
  return {
    // Summer pruning by the month is common practice, no source; south of the equator it is changed by hand.
    kind: month >= 5 && month <= 9 ? 'summer' : 'winter',
    // A winter round belongs to the season that it prepares.
    season: String(month >= 10 ? year + 1 : year),
    species: [...here],
    from: today,
    to: end.toISOString().slice(0, 10),
  }
}
