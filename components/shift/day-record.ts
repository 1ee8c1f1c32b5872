/** The numbers of a shift, added up, and as lines of a table that a spreadsheet opens. */

import { csvPlain } from '@/lib/domain/orchard/csv'
import type { ShiftRecord } from '@/lib/hooks'

export type Totals = {
  people: number
  workedS: number
  done: number
  begun: number
}

export function totalsOf({ people }: Pick<ShiftRecord, 'people'>): Totals {
  return {
    people: people.filter(({ stays }) => stays.length > 0).length,
    workedS: sum(people.map(workedS)),
    done: sum(people.map(({ done }) => done)),
    begun: sum(people.map(({ begun }) => begun)),
  }
}

/** Here, less the breaks. */
export function workedS({ hereS, breakS }: { hereS: number; breakS: number }): number {
  return Math.max(0, hereS - breakS)
}

/** One line a person. Hours with two digits, as sheets of hours have them. */
export function recordCsv(
  record: ShiftRecord,
  heads: readonly string[],
  { nameOf, clockOf }: { nameOf: (person: string) => string; clockOf: (at: string) => string }
): string {
  const rows = record.people.map((one) => {
    const [first] = one.stays
    const last = one.stays.at(-1)?.[1] ?? null
    return [
      record.date,
      nameOf(one.person),
      first ? clockOf(first[0]) : '',
      last ? clockOf(last) : '',
      hours(one.hereS),
      hours(one.breakS),
      hours(workedS(one)),
      one.done,
      one.begun,
      one.helped,
      one.alsoWorked,
      one.fromPaper,
    ]
  })
  return [heads, ...rows].map((row) => row.map(csvPlain).join(',')).join('\r\n')
}

function hours(seconds: number): string {
  return (seconds / 3600).toFixed(2)
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0)
}
