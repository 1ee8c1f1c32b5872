/** Who worked where last winter, and what they found. All invented. */

import type { ReopenReason } from '@/lib/events/state'

import type { Place } from '../demo-plan'
import { demoSeats } from '../people'

export type PastWorker = {
  name: string
  /** 1 is usual, 1.2 takes a fifth longer. */
  pace: number
  with?: { part: 'helpers' | 'learners' | 'buddy'; name: string }
  /** Takes a saw along. */
  saw?: true
}

export const pastWorkers: readonly PastWorker[] = [
  {
    name: 'Tobin Achterberg',
    pace: 0.95,
    with: { part: 'buddy', name: 'Pim Delacroix' },
    saw: true,
  },
  { name: 'Rosaura Quiñones', pace: 1, with: { part: 'learners', name: 'Lucía Quiñones' } },
  { name: 'Pim Delacroix', pace: 1.2 },
  {
    name: 'Nadia Brightwater',
    pace: 0.75,
    with: { part: 'helpers', name: 'Greta Holloway' },
    saw: true,
  },
  { name: 'Eliseo Montalbán', pace: 1.05 },
  { name: 'Hob Larrimore', pace: 1.1 },
  {
    name: demoSeats.lead,
    pace: 0.7,
    with: { part: 'helpers', name: 'Dorothea Nkemelu' },
    saw: true,
  },
  { name: 'Odalys Renwick', pace: 1.15 },
]

/** Looks over, confirms, writes down; prunes nothing. */
export const onLookout = 'Iker Salvaterra'

export type PastShift = {
  /** After the first Saturday of the winter's work. */
  weeks: number
  rows: readonly (readonly [block: string, row: number])[]
  missing: readonly string[]
  late?: string
  /** No signal among the sheds: everybody wrote on paper, and a lead entered it in the evening. */
  onPaper?: true
  asks?: { at: string; by: string; note: string; outcome: string }
  incident?: { at: string; note: string }
  weather: { temperatureC: number; humidity: number; windKmh: number; gustKmh: number }
}

export const pastShifts: readonly PastShift[] = [
  {
    weeks: 0,
    rows: rowsOf('W', 2, 3, 4, 5),
    missing: [],
    asks: {
      at: '10:40',
      by: 'Odalys Renwick',
      note: 'Is this a water shoot or next year’s limb?',
      outcome: 'Looked at it together. It stays.',
    },
    weather: { temperatureC: 3, humidity: 68, windKmh: 9, gustKmh: 16 },
  },
  {
    weeks: 1,
    rows: rowsOf('W', 6, 7, 8, 9),
    missing: ['Odalys Renwick'],
    late: 'Eliseo Montalbán',
    incident: {
      at: '12:05',
      note: 'Slipped on frozen grass onto one hand. The box was fetched, work went on.',
    },
    weather: { temperatureC: -1, humidity: 74, windKmh: 6, gustKmh: 11 },
  },
  {
    weeks: 3,
    rows: rowsOf('L', 3, 4, 6, 7, 8, 9),
    missing: [],
    late: 'Hob Larrimore',
    weather: { temperatureC: 6, humidity: 59, windKmh: 14, gustKmh: 24 },
  },
  {
    weeks: 5,
    rows: rowsOf('S', 1, 2, 3, 4, 5, 6, 7),
    missing: ['Pim Delacroix'],
    onPaper: true,
    weather: { temperatureC: 8, humidity: 63, windKmh: 11, gustKmh: 19 },
  },
]

function rowsOf(block: string, ...rows: number[]) {
  return rows.map((row) => [block, row] as const)
}

/** Of every shift. */
export const hours = {
  open: '08:50',
  from: '09:00',
  ready: '09:50',
  rest: '11:10',
  brush: '12:50',
  finds: '13:25',
  home: '13:35',
  to: '14:15',
  evening: '19:00',
}
export const lateMin = 40
export const restMin = 14
export const walkMin = 2
export const haulMin = 22
export const brushGoes = 'chip'

/** Why one in so many finished trees was opened again. */
export const reopenReasons: readonly ReopenReason[] = [
  'stubs_left',
  'centre_closed',
  'crossing_left',
  'dead_left',
]
export const reopenedPercent = 18

export const halfDoneNotes = [
  'The north side is left.',
  'Top not reached, two crossing limbs still in the middle.',
  'Dead wood is out, thinning is not begun.',
]

/** Seen on trees that somebody had just done; what the lead made of it, and what was left of it in spring. */
export const pastFlags: readonly {
  at: Place
  sign: string
  severity: 'low' | 'high'
  part: string
  /** A lead's last word; null: it stands to this day. */
  ended: string | null
}[] = [
  {
    at: ['W', 4, 9],
    sign: 'canker',
    severity: 'low',
    part: 'branch',
    ended: 'Cut out a hand below. Healed over by May.',
  },
  {
    at: ['W', 4, 8],
    sign: 'canker',
    severity: 'high',
    part: 'limb',
    ended: 'The limb is off, the wound is clean.',
  },
  {
    at: ['W', 6, 14],
    sign: 'dead_twigs',
    severity: 'low',
    part: 'shoots',
    ended: 'Frost, not disease.',
  },
  {
    at: ['L', 7, 8],
    sign: 'gum',
    severity: 'low',
    part: 'trunk',
    ended: 'A ladder had knocked it. Dry since.',
  },
  { at: ['L', 8, 12], sign: 'canker', severity: 'high', part: 'limb', ended: null },
]

/** High over the road: nobody of the crew's. */
export const pastHazard = {
  at: ['W', 1, 5] as Place,
  seen: { sign: 'crack', severity: 'high', part: 'fork', keepOutM: 9 } as const,
  done: 'Cracked leader taken off from a rope; the rest of the crown looked through.',
  doneBy: 'E. Vanterpool, licensed arborist',
}
export const leftOutRow = ['W', 1] as const
export const leftOutReason = 'Too high for us. Whoever takes the cracked one looks at the others.'

/** Theirs is a dry month after harvest; what stands high is nobody's of the crew. */
export const outInWinter: readonly string[] = ['apricot', 'cherry', 'sour_cherry', 'walnut']
