import { expect, test } from 'vitest'

import { recordCsv, totalsOf } from '@/components/shift/day-record'
import { csvPlain } from '@/lib/domain/orchard/csv'
import type { ShiftRecord } from '@/lib/hooks'

const person = (name: string, some: Partial<ShiftRecord['people'][number]> = {}) => ({
  person: name,
  stays: [['2027-01-16T08:05:00.000Z', '2027-01-16T12:35:00.000Z'] as [string, string]],
  hereS: 16_200,
  breakS: 900,
  done: 4,
  begun: 1,
  helped: 2,
  alsoWorked: 0,
  fromPaper: 1,
  ...some,
})
const record: ShiftRecord = {
  shift: 'shift',
  date: '2027-01-16',
  state: 'closed',
  openedAt: '2027-01-16T08:00:00.000Z',
  closedAt: '2027-01-16T15:00:00.000Z',
  people: [
    person('Ann, B.'),
    person('=HYPERLINK("x")', { stays: [], hereS: 0, breakS: 0, done: 0 }),
  ],
  blocks: [],
  stops: [],
}

test('the totals are the sums of the people, and who only worked on paper was not here', () => {
  expect(totalsOf(record)).toEqual({ people: 1, workedS: 15_300, done: 4, begun: 2 })
})

test('each person is a line; names with commas are quoted, formulas are taken the teeth', () => {
  const clockOf = (at: string) => at.slice(11, 16)

  expect(
    recordCsv(record, ['Date', 'Name'], { nameOf: (id) => id, clockOf }).split('\r\n')
  ).toEqual([
    'Date,Name',
    '2027-01-16,"Ann, B.",08:05,12:35,4.50,0.25,4.25,4,1,2,0,1',
    `2027-01-16,"'=HYPERLINK(""x"")",,,0.00,0.00,0.00,0,1,2,0,1`,
  ])
})

// OWASP, "CSV Injection": the characters by which a spreadsheet takes a text for a formula.
test.each(['=1+1', '+1', '-1', '@sum', '\tx', '\rx'])('%j is not run', (text) => {
  expect(csvPlain(text).replace(/^"/, '').startsWith("'")).toBe(true)
})

test('numbers and plain names stay as they are', () => {
  expect([csvPlain(-3), csvPlain('Ann'), csvPlain(null)]).toEqual(['-3', 'Ann', ''])
})
