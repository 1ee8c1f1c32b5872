/** What was done, as tables: every visit to every tree over the rounds, and the hours that people gave. */

import * as shape from '@/lib/util/shape'

import type { ArchivePart } from './archive'
import { csvTable } from './csv'

/** Which tables of the archive the history is made of. */
export const historyTables = [
  'rounds',
  'people',
  'blocks',
  'trees',
  'visits',
  'looked_over',
] as const

const { integer, text } = shape
const orNull = shape.nullable
const rowShapes = {
  rounds: shape.object({ id: text, kind: text, season: integer }),
  people: shape.object({ id: text, name: orNull(text) }),
  blocks: shape.object({ no: integer, code: text }),
  trees: shape.object({ no: integer, block_no: integer, row_no: integer, place: integer }),
  visits: shape.object({
    tree_no: integer,
    round_id: text,
    person_id: text,
    result: text,
    share: orNull(integer),
    note: orNull(text),
    at: text,
    undone_at: orNull(text),
  }),
  looked_over: shape.object({
    tree_no: integer,
    round_id: text,
    by_person_id: text,
    result: text,
    note: orNull(text),
    at: text,
  }),
}

type HistoryWords = {
  /** Block, row, tree, season, round, time, what, share, who, note. */
  heads: readonly string[]
  kindOf: (kind: string) => string
  /** done, begun, also_worked, passed, reopened. */
  resultOf: (result: string) => string
  timeOf: (at: string) => string
}

/** In the order of trees and then of time. What was undone is left out; who was forgotten has no name. */
export function historyCsv(parts: readonly ArchivePart[], words: HistoryWords): string {
  const blocks = new Map(rowsOf(parts, 'blocks').map(({ no, code }) => [no, code]))
  const trees = new Map(rowsOf(parts, 'trees').map((tree) => [tree.no, tree]))
  const rounds = new Map(rowsOf(parts, 'rounds').map((round) => [round.id, round]))
  const names = new Map(rowsOf(parts, 'people').map(({ id, name }) => [id, name]))
  const visits = rowsOf(parts, 'visits').filter(({ undone_at }) => undone_at === null)
  const looks = rowsOf(parts, 'looked_over').map(({ by_person_id, ...look }) => ({
    ...look,
    person_id: by_person_id,
    share: null,
  }))
  const things = [...visits, ...looks].toSorted(
    (a, b) => a.tree_no - b.tree_no || Date.parse(a.at) - Date.parse(b.at)
  )
  const lines = things.map(({ tree_no, round_id, person_id, result, share, note, at }) => {
    const tree = trees.get(tree_no)
    const round = rounds.get(round_id)
    return [
      blocks.get(tree?.block_no ?? 0) ?? null,
      tree?.row_no ?? null,
      tree?.place ?? null,
      round?.season ?? null,
      round ? words.kindOf(round.kind) : null,
      words.timeOf(at),
      words.resultOf(result),
      share,
      names.get(person_id) ?? null,
      note,
    ]
  })
  return csvTable([words.heads, ...lines])
}

/** As the referee adds them up for each shift. */
export type ShiftHours = {
  date: string
  kind: string
  people: readonly {
    person: string
    hereS: number
    breakS: number
    done: number
    begun: number
    helped: number
  }[]
}

type HoursWords = {
  /** Date, round, who, hours here, hours of breaks, done, half done, helped. */
  heads: readonly string[]
  kindOf: (kind: string) => string
  nameOf: (person: string) => string | null
}

/** A line for each person and shift; hours with two digits. */
export function hoursCsv(shifts: readonly ShiftHours[], words: HoursWords): string {
  const lines = shifts.flatMap(({ date, kind, people }) =>
    people.map(({ person, hereS, breakS, done, begun, helped }) => [
      date,
      words.kindOf(kind),
      words.nameOf(person),
      inHours(hereS),
      inHours(breakS),
      done,
      begun,
      helped,
    ])
  )
  return csvTable([words.heads, ...lines])
}

function inHours(seconds: number): number {
  return Math.round(seconds / 36) / 100
}

function rowsOf<Table extends keyof typeof rowShapes>(
  parts: readonly ArchivePart[],
  table: Table
): shape.Out<(typeof rowShapes)[Table]>[] {
  const known = rowShapes[table] as shape.Shape<shape.Out<(typeof rowShapes)[Table]>>
  return parts
    .filter((part) => part.table === table)
    .flatMap(({ rows }) => rows)
    .flatMap((row) => shape.read(known, JSON.parse(row))?.value ?? [])
}
