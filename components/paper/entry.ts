/** One line from a sheet: as it is typed, what is sent of it, and what became of it. */

import type { Block, Tree } from '@/lib/domain/orchard/types'
import type { Accepted, Refusal } from '@/lib/events/answer'
import type { ArgsOf } from '@/lib/events/commands'
import type { Sent } from '@/lib/hooks'
import { instantAt } from '@/lib/util/clock-in'
import { diseaseArgs, hazardArgs } from '../tree/flag-draft'
import { diseaseSigns, hazardSigns } from '../tree/flag-words'
import { clockTyped, shareTyped, treeTyped } from './read-typed'

export const entrySorts = ['work', 'attendance', 'flag'] as const
export type EntrySort = (typeof entrySorts)[number]

/** Everything as it was typed, so that nothing is lost by not being understood. */
export type Typed = {
  sort: EntrySort
  person: string
  tree: string
  /** Empty: it was finished. */
  share: string
  note: string
  begun: string
  at: string
  arrived: string
  breakFrom: string
  breakTo: string
  left: string
  /** `disease gum`, `arborist crack`. */
  sign: string
}
export type Field = Exclude<keyof Typed, 'sort'> | 'date'

export type Outcome =
  | { state: 'accepted'; kept: NonNullable<Accepted['kept']> | null; missing: readonly string[] }
  | { state: 'kept' }
  | { state: 'refused'; refused: readonly Refusal[] }
  | { state: 'no_answer' }
  | { state: 'failed' }

/** `id` is the command's own: sent again under it, nothing is entered twice. A change is a new line. */
export type Entry = { id: string; date: string; typed: Typed; outcome: Outcome | null }

export type Entered =
  | { name: 'enter_work'; args: ArgsOf<'enter_work'>; person: string; at: string }
  | { name: 'enter_attendance'; args: ArgsOf<'enter_attendance'>; person: string; at: string }
  | { name: 'flag_tree'; args: ArgsOf<'flag_tree'>; person: string; at: string }

export type ReadEntry = { state: 'whole'; entered: Entered } | { state: 'faulty'; fields: Field[] }

export type Reader = {
  blocks: readonly Block[]
  trees: readonly Tree[]
  lastBlock: number | null
  timeZone: string
  date: string
}

export const emptyTyped: Typed = {
  sort: 'work',
  person: '',
  tree: '',
  share: '',
  note: '',
  begun: '',
  at: '',
  arrived: '',
  breakFrom: '',
  breakTo: '',
  left: '',
  sign: '',
}

export function readEntry(typed: Typed, reader: Reader): ReadEntry {
  const faults: Field[] = []
  const when = (field: 'begun' | 'at' | 'arrived' | 'breakFrom' | 'breakTo' | 'left') => {
    if (typed[field].trim() === '') return null
    const clock = clockTyped(typed[field])
    const at = clock && instantAt(reader.date, clock, reader.timeZone)
    if (!at) faults.push(field)
    return at
  }
  if (typed.person === '') faults.push('person')
  const entered = readers[typed.sort](typed, { ...reader, when, fault: (f) => faults.push(f) })
  return entered && faults.length === 0
    ? { state: 'whole', entered }
    : { state: 'faulty', fields: [...new Set(faults)] }
}

type Reading = Reader & {
  when: (field: 'begun' | 'at' | 'arrived' | 'breakFrom' | 'breakTo' | 'left') => string | null
  fault: (field: Field) => void
}

const readers: Record<EntrySort, (typed: Typed, reading: Reading) => Entered | null> = {
  work: (typed, { when, fault, ...reader }) => {
    const tree = treeTyped(typed.tree, reader)
    if (tree === null) fault('tree')
    const share = typed.share.trim() === '' ? null : shareTyped(typed.share)
    if (typed.share.trim() !== '' && share === null) fault('share')
    const [begunAt, at] = [when('begun'), when('at')]
    if (at === null) fault('at')
    if (begunAt !== null && at !== null && begunAt > at) fault('begun')
    if (tree === null || at === null) return null
    const args = { tree: tree.no, at, begunAt, share, note: typed.note.trim() || null }
    return { name: 'enter_work', args, person: typed.person, at }
  },

  attendance: (typed, { when, fault }) => {
    const [arrivedAt, from, to, leftAt] = [
      when('arrived'),
      when('breakFrom'),
      when('breakTo'),
      when('left'),
    ]
    if ((from === null) !== (to === null)) fault(from === null ? 'breakFrom' : 'breakTo')
    const inOrder = [arrivedAt, from, to, leftAt].filter((time) => time !== null)
    const [first] = inOrder
    if (first === undefined) fault('arrived')
    if (inOrder.some((time, at) => at > 0 && time <= (inOrder[at - 1] ?? ''))) fault('left')
    if (first === undefined) return null
    const breaks = from !== null && to !== null ? [[from, to]] : []
    const args = { arrivedAt, breaks, leftAt }
    return { name: 'enter_attendance', args, person: typed.person, at: first }
  },

  flag: (typed, { when, fault, ...reader }) => {
    const tree = treeTyped(typed.tree, reader)
    if (tree === null) fault('tree')
    const at = when('at')
    if (at === null) fault('at')
    const [kind, sign] = typed.sign.split(' ')
    const disease = kind === 'disease' ? diseaseSigns.find((one) => one === sign) : undefined
    const hazard = kind === 'arborist' ? hazardSigns.find((one) => one === sign) : undefined
    if (!disease && !hazard) fault('sign')
    if (tree === null || at === null || (!disease && !hazard)) return null
    // A flag is dated when it comes in; when it was seen stands in its note.
    const note = [clockTyped(typed.at), typed.note.trim()].filter(Boolean).join(' · ')
    const args = hazard
      ? hazardArgs(tree.no, hazard, note || null)
      : diseaseArgs(tree.no, { disease, severity: 'low', place: null, note })
    return args && { name: 'flag_tree', args, person: typed.person, at }
  },
}

export function outcomeOf(sent: Sent): Outcome {
  switch (sent.state) {
    case 'accepted':
      return {
        state: 'accepted',
        kept: sent.answer.kept ?? null,
        missing: sent.answer.missing ?? [],
      }
    case 'refused':
      return { state: 'refused', refused: sent.refused }
    case 'kept':
    case 'no_answer':
    case 'failed':
      return { state: sent.state }
  }
}

/** Not sent, or nobody knows whether it came in. */
export function isToSend({ outcome }: Pick<Entry, 'outcome'>): boolean {
  return outcome === null || outcome.state === 'no_answer'
}

/** Ready to be put away. */
export function isIn({ outcome }: Pick<Entry, 'outcome'>): boolean {
  return outcome?.state === 'accepted' || outcome?.state === 'kept'
}
