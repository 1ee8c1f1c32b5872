/** The demo's round and shift, fit for the day on which somebody looks at them. */

import type { Species } from '@/lib/domain/orchard/types'
import { proposedOff } from '@/lib/domain/safety/species-season'
import type { ArgsOf } from '@/lib/events/commands'
import { darkness } from '@/lib/events/dark'
import { dayIn } from '@/lib/util/day-in'

export type DemoDay = {
  round: ArgsOf<'open_round'>
  shift: Omit<ArgsOf<'schedule_shift'>, 'round'>
  off: ArgsOf<'open_shift'>['off']
}

/** To whoever opens the demo it is a morning, at whatever hour; the field it is said to stand on may lie in the dark. */
export const itIsDay: ArgsOf<'make_exception'> = {
  what: darkness,
  because: 'day_here',
  note: 'This orchard is invented: in the demo it is always morning.',
}

const minuteMs = 60_000
/** So long ago the crew began, and so long they stay: also at night it is the middle of a morning. */
const sinceMs = 150 * minuteMs
const lengthMs = 330 * minuteMs

export function demoDay(now: Date, timeZone: string): DemoDay {
  const date = dayIn(timeZone, now)
  const month = Number(date.slice(5, 7))
  const startsAt = Math.floor((now.getTime() - sinceMs) / (15 * minuteMs)) * 15 * minuteMs
  const round = roundFor(month, Number(date.slice(0, 4)))
  const off = proposedOff(month).filter((species) => round.species.includes(species))
  return {
    round,
    shift: {
      date,
      startsAt: new Date(startsAt).toISOString(),
      endsAt: new Date(startsAt + lengthMs).toISOString(),
      signal: 'horn',
    },
    off: Object.fromEntries(off.map((species) => [species, 'season'])),
  }
}

type Round = Omit<ArgsOf<'open_round'>, 'species'> & { species: Species[] }

const plums = ['european_plum', 'japanese_plum'] as const

/** Which trees are pruned when: common practice north of the equator, no source. */
function roundFor(month: number, year: number): Round {
  if (month <= 3) return winterOf(year - 1)
  if (month >= 11) return winterOf(year)
  if (month <= 5) {
    const species: Species[] = ['apple', 'pear', ...plums]
    return { kind: 'training', season: year, species, from: `${year}-04-01`, to: `${year}-05-31` }
  }
  if (month <= 8) {
    const species: Species[] = [
      'cherry',
      'sour_cherry',
      'apricot',
      'peach',
      'nectarine',
      ...plums,
      'apple',
      'pear',
      'quince',
    ]
    return { kind: 'summer', season: year, species, from: `${year}-06-01`, to: `${year}-08-31` }
  }
  const species: Species[] = [
    'peach',
    'nectarine',
    ...plums,
    'cherry',
    'sour_cherry',
    'apricot',
    'almond',
    'apple',
  ]
  return {
    kind: 'after_harvest',
    season: year,
    species,
    from: `${year}-09-01`,
    to: `${year}-10-31`,
  }
}

/** Cherry and apricot belong to it; whether they are on today is another question. */
export function winterOf(year: number): Round {
  return {
    kind: 'winter',
    season: year,
    species: [
      'apple',
      'pear',
      ...plums,
      'apricot',
      'peach',
      'nectarine',
      'cherry',
      'sour_cherry',
      'quince',
      'walnut',
      'fig',
      'persimmon',
      'almond',
    ],
    from: `${year}-11-01`,
    to: `${year + 1}-03-31`,
  }
}
