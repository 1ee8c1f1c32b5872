/** What anybody on the shift does, for themselves or for whom they act. */

import type { Claim, State } from '@/lib/events/state'
import { plainJpeg } from '../supabase/scene'
import {
  anybody,
  aRow,
  aTool,
  aTree,
  type Draw,
  type Drawn,
  type Moves,
  type Situation,
  some,
  treesIn,
} from './draw'

const reasons = [
  { code: 'limb_thick', seen: true, value: 14.5, limit: 10 },
  { code: 'line_near', seen: false },
]

export const movesOfCrew: Moves = {
  give_consent: ({ state, personId }) => ({
    textVersion: 1,
    by: state.minors[personId]?.guardianId ?? null,
  }),
  sign_briefing: ({ state, draw }) => ({
    version: draw.chance(6) ? 1 : (openShiftOf(state)?.briefingVersion ?? 1),
    language: draw.of(['en', 'es']),
    how: 'heard',
  }),
  arrive: () => ({}),
  start_break: ({ draw }) => ({ at: draw.of([null, '2026-11-24T09:00:00.000Z']) }),
  end_break: () => ({ at: null }),
  leave: () => ({ at: null }),
  check_equipment: ({ draw }) => ({ failedItems: draw.chance(5) ? ['gloves'] : [] }),
  take_tool: ({ state, draw }) => ({
    tool: aTool(state, draw),
    failedItems: draw.chance(8) ? ['blade'] : [],
  }),
  return_tool: ({ state, draw }) => ({ tool: aTool(state, draw) }),
  fail_tool: ({ state, draw }) => ({ tool: aTool(state, draw), failedItems: ['blade'] }),
  clean_tool: ({ state, draw }) => ({ tools: [aTool(state, draw)] }),
  mark_big_cuts: ({ draw }) => ({ tree: aTree(draw) }),
  claim_tree: ({ state, personId, draw }) => ({
    tree: aTree(draw),
    kind: draw.of(['prune', 'prune', 'prune', 'brush', 'other']),
    ladder: draw.chance(6),
    helpers: draw.chance(3) ? others(state, personId, draw) : [],
    learners: [],
    buddy: draw.chance(6) ? anybody(state, draw) : null,
  }),
  take_brush: ({ state, personId, draw }) => ({
    ...aRow(draw),
    helpers: draw.chance(3) ? others(state, personId, draw) : [],
  }),
  finish_brush: ({ state, personId, draw }) => {
    const own = claimsOf(state, personId)
    const id = draw.of(draw.chance(4) ? Object.keys(state.claims) : own)
    const row = id && state.claims[id]?.row
    return row ? { claim: id, trees: draw.chance(4) ? [] : treesIn(row) } : null
  },
  join_tree: ({ state, draw }) =>
    some('claim', draw.of(Object.keys(state.claims)), { part: draw.of(['helper', 'learner']) }),
  leave_tree: ({ state, personId, draw }) => some('claim', draw.of(claimsOf(state, personId))),
  hand_over: ({ state, personId, draw }) => {
    const to = somebodyHere(state, draw)
    const claim = draw.of(draw.chance(4) ? Object.keys(state.claims) : claimsOf(state, personId))
    const howReached = draw.chance(10) ? null : 'Spoke in person'
    return claim === undefined || to === personId ? null : { claim, to, howReached }
  },
  release_tree: (situation) => {
    const work = workOf(situation)
    return work && { ...work, share: situation.draw.of([null, 30, 70]), note: null }
  },
  finish_tree: (situation) => workOf(situation),
  undo_tree: ({ state, draw }) => ({
    tree: Number(draw.of(Object.keys(state.work)) ?? aTree(draw)),
  }),
  flag_tree: ({ draw }) => {
    const kind = draw.of(['disease', 'disease', 'arborist'])
    return {
      tree: aTree(draw),
      kind,
      sign: 'canker',
      severity: draw.of(['low', 'high', 'danger_now']),
      keepOutM: draw.of([null, 0, 6]),
      share: draw.of([null, 40]),
      ...(kind === 'arborist' && draw.of([{}, { reasons: [] }, { reasons, limb: { cm: 14.5 } }])),
    }
  },
  withdraw_flag: ({ state, personId, draw }) => {
    const all = Object.keys(state.flags)
    const theirs = all.filter((id) => state.flags[id]?.raisedBy === personId)
    return some('flag', draw.of(draw.chance(4) ? all : theirs))
  },
  answer_weather: () => ({}),
  answer_keep_out: ({ state, personId, draw }) => {
    const all = Object.keys(state.flags)
    const told = all.filter((id) => state.flags[id]?.inside[personId])
    return some('flag', draw.of(draw.chance(3) ? all : told))
  },
  add_photo: ({ state, personId, draw }) => {
    const mark = draw.of(Object.values(state.marked).filter(({ by }) => by === personId))?.mark
    return mark === undefined
      ? {
          tree: aTree(draw),
          flag: draw.of([null, ...Object.keys(state.flags)]),
          purpose: 'before',
          jpeg: plainJpeg,
        }
      : { mark, purpose: 'mark', jpeg: plainJpeg }
  },
  stop_work: ({ draw }) => ({ block: draw.of([null, 1]) }),
  call_for_help: ({ state, draw }) => ({
    kind: draw.of(['question', 'tool', 'injury', 'lost_person']),
    tree: draw.of([null, aTree(draw)]),
    subject: draw.of([null, anybody(state, draw)]),
    at: draw.of([null, '2026-11-24T09:00:00.000Z']),
  }),
  end_call: ({ state, draw }) => some('call', draw.of(Object.keys(state.calls))),
  answer_stop: ({ state, draw }) => some('stop', draw.of(Object.keys(state.stops))),
}

function somebodyHere(state: State, draw: Draw): string {
  return draw.of(Object.keys(state.attendance)) ?? anybody(state, draw)
}

function others(state: State, personId: string, draw: Draw): string[] {
  const other = somebodyHere(state, draw)
  return other === personId ? [] : [other]
}

function claimsOf(state: State, personId: string): string[] {
  return Object.keys(state.claims).filter((id) => state.claims[id]?.people[personId])
}

function openShiftOf(state: State) {
  return Object.values(state.shifts).find((shift) => shift.state === 'open')
}

/** One's own tree mostly; sometimes another's, or one begun without a claim. */
function workOf({ state, personId, draw }: Situation): Drawn {
  const claims = Object.entries(state.claims)
  const own = claims.find(([, claim]) => Object.hasOwn(claim.people, personId))
  const [id, claim]: [string | null, Claim | null] = (draw.chance(5) ? draw.of(claims) : own) ?? [
    null,
    null,
  ]
  return { claim: id, tree: claim?.tree ?? aTree(draw), begunAt: null, at: null, elapsedS: 60 }
}
