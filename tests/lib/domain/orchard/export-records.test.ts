import { expect, test } from 'vitest'

import { historyCsv, hoursCsv } from '@/lib/domain/orchard/export-records'

const part = (table: string, ...rows: object[]) => ({
  table,
  columns: Object.keys(rows[0] ?? {}),
  rows: rows.map((row) => JSON.stringify(row)),
})

test('every visit and every look is a line, in the order of trees and then of time', () => {
  const visit = { round_id: 'r1', person_id: 'p1', share: null, note: null, undone_at: null }
  const parts = [
    part(
      'rounds',
      { id: 'r1', kind: 'winter', season: 2026 },
      { id: 'r2', kind: 'summer', season: 2027 }
    ),
    part('people', { id: 'p1', name: '=Ann' }, { id: 'p2', name: null }),
    part('blocks', { no: 1, code: 'N' }),
    part(
      'trees',
      { no: 1, block_no: 1, row_no: 1, place: 1 },
      { no: 2, block_no: 1, row_no: 1, place: 2 }
    ),
    part(
      'visits',
      { ...visit, tree_no: 2, result: 'done', at: '2026-12-01T10:00:00+00:00' },
      {
        ...visit,
        tree_no: 1,
        round_id: 'r2',
        person_id: 'p2',
        result: 'begun',
        share: 50,
        note: 'north side',
        at: '2027-06-01T09:00:00+00:00',
      },
      { ...visit, tree_no: 1, result: 'done', at: '2026-12-01T09:00:00+00:00' },
      {
        ...visit,
        tree_no: 1,
        result: 'done',
        at: '2026-12-01T08:00:00+00:00',
        undone_at: '2026-12-01T08:01:00+00:00',
      }
    ),
    part('looked_over', {
      tree_no: 1,
      round_id: 'r1',
      by_person_id: 'p1',
      result: 'passed',
      note: null,
      at: '2026-12-01T09:30:00+00:00',
    }),
  ]

  const csv = historyCsv(parts, {
    heads: ['Block', 'Row', 'Tree', 'Season', 'Round', 'When', 'What', 'Share', 'Who', 'Note'],
    kindOf: (kind) => kind,
    resultOf: (result) => result,
    timeOf: (at) => at.slice(0, 16),
  })

  expect(csv.split('\r\n')).toEqual([
    'Block,Row,Tree,Season,Round,When,What,Share,Who,Note',
    "N,1,1,2026,winter,2026-12-01T09:00,done,,'=Ann,",
    "N,1,1,2026,winter,2026-12-01T09:30,passed,,'=Ann,",
    'N,1,1,2027,summer,2027-06-01T09:00,begun,50,,north side',
    "N,1,2,2026,winter,2026-12-01T10:00,done,,'=Ann,",
    '',
  ])
})

test('hours have two digits, and whoever was forgotten no name', () => {
  const person = { hereS: 5430, breakS: 900, done: 7, begun: 1, helped: 2 }
  const csv = hoursCsv(
    [
      {
        date: '2026-12-01',
        kind: 'winter',
        people: [
          { person: 'p1', ...person },
          { person: 'p2', ...person },
        ],
      },
    ],
    {
      heads: ['Date', 'Round', 'Who', 'Here', 'Breaks', 'Done', 'Half done', 'Helped'],
      kindOf: (kind) => kind,
      nameOf: (id) => (id === 'p1' ? 'Ann' : null),
    }
  )

  expect(csv).toBe(
    'Date,Round,Who,Here,Breaks,Done,Half done,Helped\r\n2026-12-01,winter,Ann,1.51,0.25,7,1,2\r\n2026-12-01,winter,,1.51,0.25,7,1,2\r\n'
  )
})
