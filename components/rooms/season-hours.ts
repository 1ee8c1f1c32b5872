/** Hours of a season added up, by person and by shift. */

import type { VolunteerHours } from '@/lib/hooks'

export type HoursOfPerson = {
  person: string
  shifts: number
  workedS: number
  breakS: number
  done: number
}

/** Whoever worked most comes first; the order of equals is that of their ids, so that it stays. */
export function hoursByPerson({ shifts }: Pick<VolunteerHours, 'shifts'>): HoursOfPerson[] {
  const all = new Map<string, HoursOfPerson>()
  for (const { people } of shifts) {
    for (const { person, hereS, breakS, done } of people) {
      const before = all.get(person) ?? { person, shifts: 0, workedS: 0, breakS: 0, done: 0 }
      all.set(person, {
        person,
        // Whoever only has work entered from paper was not counted in.
        shifts: before.shifts + (hereS > 0 ? 1 : 0),
        workedS: before.workedS + hereS - breakS,
        breakS: before.breakS + breakS,
        done: before.done + done,
      })
    }
  }
  return [...all.values()].toSorted(
    (a, b) => b.workedS - a.workedS || (a.person < b.person ? -1 : 1)
  )
}

export function workedIn({ people }: Pick<VolunteerHours['shifts'][number], 'people'>): number {
  return people.reduce((all, { hereS, breakS }) => all + hereS - breakS, 0)
}
