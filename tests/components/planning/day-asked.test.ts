import { expect, test } from 'vitest'

import { dayAsked } from '@/components/planning/day-asked'
import { endOf } from '@/components/planning/use-shift-hours'
import { whoPrunes } from '@/components/planning/who-prunes'
import type { Tree } from '@/lib/domain/orchard/types'
import type { State } from '@/lib/events/state'
import { startingView } from '@/lib/state/view'
import { aBlock, aTree } from '../../lib/domain/an-orchard'
import {
  aClaim,
  aFlag,
  ann,
  aState,
  bo,
  idOf,
  later,
  lead,
  round,
  shift,
} from '../../lib/events/a-state'

const block = aBlock({ rowSpacingM: 6, treeSpacingM: 5, firstTree: null })

/** Trees 1 to 9, thirty metres from each other. */
const tree = (no: number, change: Partial<Tree> = {}) =>
  aTree({ no, place: no * 6, heightCm: 220, ...change })

const trees = [
  tree(1),
  tree(2),
  tree(3, { asksSaw: true }),
  tree(4, { species: 'plum' }),
  tree(5),
  tree(6),
  tree(7, { life: 'dead' }),
  tree(8, { heightCm: 400 }),
  tree(9),
]

function asked(change: Partial<State>) {
  const state = aState({ me: { personId: lead, role: 'lead' }, ...change })
  const open = state.shifts[shift]
  if (!open) throw new Error('A shift is open.')
  const ground = {
    trees: new Map(trees.map((one) => [one.no, one])),
    blocks: new Map([[1, block]]),
  }
  return dayAsked({
    state,
    shift: { ...open, id: shift },
    sheet: { version: 1, trees, blocks: [block], cultivars: [] },
    ground,
    times: {
      at: '2027-01-16T10:00:00.000Z',
      visits: [
        [6, shift, round, 'begun', 600, 2, false],
        [5, shift, round, 'done', 1800, 1, false],
      ],
      shifts: [{ shift, hereS: 2 * 2 * 3600, breakS: 0 }],
    },
    people: [ann, bo],
    nowMs: Date.parse('2027-01-16T10:00:00.000Z'),
    endsMs: Date.parse('2027-01-16T14:00:00.000Z'),
  })
}

test('what is closed, off today or beyond who is here stands aside; what is done is not left', () => {
  const { asked: day, aside } = asked({
    flags: { [idOf('flag')]: aFlag(9, 'arborist') },
    shifts: Object.fromEntries(
      Object.entries(aState().shifts).map(([id, one]) => [id, { ...one, off: { plum: 'lead' } }])
    ),
    work: { 5: { state: 'done', share: null }, 6: { state: 'begun', share: 30 } },
    claims: {
      [idOf('claim')]: {
        ...aClaim(1, { [ann]: 'holder', [lead]: 'learner' }),
        openedAt: '2027-01-16T09:30:00.000Z',
      },
    },
  })

  expect(aside).toEqual({ closed: 1, off: 1, beyond: 2 })
  expect(day.blocks[0]).toMatchObject({
    people: 1,
    inHand: [{ species: 'apple', size: 'medium', minutesSoFar: 30 }],
    waiting: [{ minutesSoFar: 0 }, { minutesSoFar: 20 }],
  })
  expect(day.times).toEqual([{ species: 'apple', size: 'medium', shift, minutes: 30 }])
  // Two visits of twenty and thirty minutes, and half an hour at the tree in hand.
  expect([day.atTreesMinutes, day.hereMinutes]).toEqual([80, 240])
  // Nobody has rested in four hours, and ten minutes in two hours are expected of four: a 24th of what is left.
  expect(day.minutesLeft).toBeCloseTo(240 - 10)
  expect(day.minutesADay).toBeCloseTo(360 - 15)
})

test('a stopped block stands aside, and tall trees while ladders are off', () => {
  const stop = {
    block: 1,
    calledBy: lead,
    calledAt: later,
    resumed: false,
    answers: {},
    seenBy: {},
  }
  const skills = { [ann]: { hand_saw: null, ladder: null } }
  const shifts = Object.fromEntries(
    Object.entries(aState().shifts).map(([id, one]) => [
      id,
      { ...one, off: { ladder: 'lead' as const } },
    ])
  )
  const asideOf = (change: Partial<State>) => asked({ skills, ...change }).aside

  expect(asideOf({ stops: { stop } })).toEqual({ closed: 8, off: 0, beyond: 0 })
  expect(asideOf({ stops: { stop: { ...stop, resumed: true } } }).closed).toBe(0)
  expect(asideOf({ shifts })).toEqual({ closed: 0, off: 1, beyond: 0 })
})

test('who may use them brings saw and ladder trees in', () => {
  const skills = { [ann]: { hand_saw: null, ladder: null } }

  expect(asked({ skills }).aside.beyond).toBe(0)
})

test('a day ends with its light, unless work goes on without it or began after it', () => {
  const until = (startsAt: string, endsAt: string, sunset: string | null) =>
    endOf(
      { startsAt: clock(startsAt), endsAt: clock(endsAt) },
      sunset === null ? null : Date.parse(clock(sunset))
    )
  const clock = (time: string) => `2027-01-16T${time}:00.000Z`

  expect(until('09:00', '18:00', '16:30')).toEqual({
    endsMs: Date.parse(clock('16:30')),
    isLight: true,
  })
  const byShift = { endsMs: Date.parse(clock('18:00')), isLight: false }
  expect(until('09:00', '18:00', '18:30')).toEqual(byShift)
  expect(until('09:00', '18:00', null)).toEqual(byShift)
  expect(until('17:00', '18:00', '16:30')).toEqual(byShift)
})

test('who hauls brush, learns or is not ready does not make the pace', () => {
  const state = aState({
    me: { personId: lead, role: 'lead' },
    equipped: { [ann]: true, [bo]: false },
  })
  const who = (change: Partial<State>) =>
    whoPrunes({ ...startingView, phase: 'in', state: { ...state, ...change } })

  expect(who({})).toEqual([ann])
  expect(who({ equipped: { [ann]: true, [bo]: true } })).toEqual([ann, bo])
  expect(who({ claims: { one: aClaim(1, { [lead]: 'holder', [ann]: 'learner' }) } })).toEqual([
    lead,
  ])
  expect(who({ claims: { one: { ...aClaim(1, { [ann]: 'holder' }), kind: 'brush' } } })).toEqual([])
  // Whoever rests comes back.
  expect(who({ attendance: { [ann]: { state: 'break', since: later } } })).toEqual([ann])
})
