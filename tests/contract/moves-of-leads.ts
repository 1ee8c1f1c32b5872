/** What only leads and managers do. */

import type { Flag, State } from '@/lib/events/state'
import { anybody, aRow, aTool, aTree, type Draw, type Moves, some, treesIn } from './draw'

export const movesOfLeads: Moves = {
  change_orchard: ({ draw }) => ({
    ...(draw.chance(3) && { emergency: { call: `555 01${10 + draw.number(90)}` } }),
    units: draw.of(['metric', 'us']),
    houseRules: draw.chance(2) ? { ladder_from_cm: 200 + draw.number(100) } : null,
  }),
  add_person: ({ state, draw }) => ({
    name: 'Kim',
    role: draw.of(['volunteer', 'visitor', 'lead']),
    ...(draw.chance(3) && { ageBand: 'minor', guardian: anybody(state, draw), role: 'volunteer' }),
  }),
  change_person: ({ state, draw }) => ({
    subject: anybody(state, draw),
    phone: '555 0100',
    ...(draw.chance(3) && { ageBand: draw.of(['adult', 'minor']) }),
    ...(draw.chance(5) && { role: draw.of(['volunteer', 'lead', 'visitor']) }),
  }),
  admit_person: ({ state, draw }) => ({ subject: anybody(state, draw) }),
  forget_person: ({ state, draw }) => ({ subject: anybody(state, draw) }),
  remove_person: ({ state, draw }) => ({ subject: anybody(state, draw) }),
  make_invite: ({ draw }) => ({
    kind: 'join',
    role: 'volunteer',
    codeHash: `${'0'.repeat(58)}${100000 + draw.number(900000)}`,
  }),
  grant_skill: ({ state, draw }) => ({
    subject: anybody(state, draw),
    skill: aSkill(draw),
    until: draw.of([null, '2026-11-01', '2027-11-01']),
  }),
  end_skill: ({ state, draw }) => ({ subject: anybody(state, draw), skill: aSkill(draw) }),
  open_round: ({ draw }) => ({
    kind: 'winter',
    season: draw.of([2026, 2027]),
    species: draw.of([['apple'], ['cherry', 'apple'], ['cherry']]),
    from: '2026-11-01',
    to: '2027-03-31',
  }),
  enter_work: ({ draw }) => ({
    tree: aTree(draw),
    at: onPaper(draw),
    begunAt: null,
    share: draw.of([null, null, 30]),
    note: null,
  }),
  enter_attendance: ({ draw }) => {
    const at = onPaper(draw)
    return {
      arrivedAt: draw.of([null, at]),
      breaks: draw.chance(2) ? [] : [[at, minutesAfter(at, 10)]],
      leftAt: draw.of([null, minutesAfter(at, 20)]),
    }
  },
  close_round: ({ state, draw }) =>
    some('round', draw.of(Object.keys(state.rounds)), {
      callOff: draw.chance(3) ? [] : Object.keys(state.shifts),
    }),
  reopen_round: ({ state, draw }) => some('round', draw.of(Object.keys(state.rounds))),
  schedule_shift: ({ state, draw }) => {
    const round = draw.of(Object.keys(state.rounds))
    return round === undefined
      ? null
      : {
          round,
          date: '2026-11-24',
          startsAt: '2026-11-24T08:00:00.000Z',
          endsAt: '2026-11-24T15:00:00.000Z',
          signal: draw.of(['horn', 'whistle']),
        }
  },
  change_shift: ({ state, draw }) =>
    some('shift', draw.of(Object.keys(state.shifts)), {
      date: '2026-11-25',
      startsAt: '2026-11-25T09:00:00.000Z',
      endsAt: '2026-11-25T13:00:00.000Z',
      signal: draw.of(['horn', 'voice']),
    }),
  cancel_shift: ({ state, draw }) => some('shift', draw.of(Object.keys(state.shifts))),
  open_shift: ({ state, draw }) => {
    const shift = draw.of(Object.keys(state.shifts))
    return shift === undefined ? null : { shift, off: draw.of([{}, { cherry: 'rain' }]) }
  },
  close_shift: ({ state, draw }) => ({
    why: draw.chance(2)
      ? {
          people: whyFor(Object.keys(state.attendance)),
          claims: whyFor(Object.keys(state.claims)),
          tools: whyFor(heldTools(state)),
        }
      : { people: {}, claims: {}, tools: {} },
    notFound: draw.chance(2) ? Object.keys(state.attendance).slice(0, 2) : [],
  }),
  found_person: ({ state, draw }) => ({ subject: anybody(state, draw) }),
  set_off_today: ({ draw }) => ({
    what: draw.of(['ladder', 'apple', 'cherry']),
    reason: draw.of(['wind', null, null]),
  }),
  // Mostly mild: thunder and storm would end the day.
  write_weather: ({ draw }) => ({
    temperatureC: draw.of([null, 8, 21.5, 31]),
    humidity: draw.of([null, 35, 62.5, 93]),
    gustKmh: draw.of([null, 12, 30.58, ...(draw.chance(12) ? [64] : [])]),
    canopy: draw.of([null, 'dry', 'dry', 'wet']),
    thunder: draw.chance(16),
    rainInH: draw.of([null, 96, 96, 6]),
    at: draw.of([null, null, minutesAfter(new Date().toISOString(), -45)]),
  }),
  make_exception: ({ draw }) => ({
    ...draw.of([
      { what: 'apple', because: 'bark_is_dry' },
      { what: 'cherry', because: 'lead_judges' },
      { what: 'dark', because: 'lamps' },
      { what: 'dark', because: 'day_here' },
    ]),
    note: draw.of([null, 'Only the two by the gate']),
  }),
  bring_in_forecast: () => ({ hours: [['2026-11-25T08:00:00.000Z', 9.5, null, 8, 14, 0]] }),
  end_exception: ({ draw }) => ({ what: draw.of(['apple', 'cherry', 'dark']) }),
  write_briefing: ({ state, draw }) => {
    const shift = draw.of(Object.keys(state.shifts))
    const change = draw.of(['before_next_tree', 'come_down'])
    return shift === undefined ? null : { shift, change, topics: [{ code: 'ladders' }] }
  },
  give_briefing: ({ state, draw }) => {
    const here = Object.keys(state.attendance)
    return { people: here.length > 0 && !draw.chance(4) ? here : [anybody(state, draw)] }
  },
  add_tool: ({ state, draw }) => ({
    label: 'T',
    kind: draw.of(['pruner', 'saw', 'ladder']),
    ownedBy: draw.chance(3) ? anybody(state, draw) : null,
  }),
  mend_tool: ({ state, draw }) => ({ tool: aTool(state, draw) }),
  deal_trees: ({ state, draw }) => ({
    trees: [...new Set([aTree(draw), aTree(draw), aTree(draw)])],
    to: [...new Set([anybody(state, draw), anybody(state, draw)])],
  }),
  leave_out_trees: ({ draw }) => ({
    trees: [...new Set([aTree(draw), aTree(draw)])],
    reason: draw.of(['Wet ground', null]),
  }),
  take_back: ({ draw }) => ({ trees: [aTree(draw), aTree(draw)] }),
  unmark_big_cuts: ({ draw }) => ({ tree: aTree(draw) }),
  end_claim: ({ state, draw }) =>
    some('claim', draw.of(Object.keys(state.claims)), {
      howReached: 'Called out to',
      share: draw.of([null, 50]),
    }),
  answer_call: ({ state, draw }) => some('call', draw.of(Object.keys(state.calls))),
  write_incident: ({ state, draw }) => ({
    kind: draw.of(['injury', 'near_miss', 'other']),
    tree: draw.of([null, aTree(draw)]),
    call: draw.of([null, ...Object.keys(state.calls)]),
  }),
  mark_brush: ({ draw }) => ({ trees: treesIn(aRow(draw)), hauled: draw.chance(2) }),
  direct_brush: ({ draw }) => {
    const { block, row } = aRow(draw)
    return { block, rows: [row], goes: draw.of([null, 'burn', 'bag']) }
  },
  look_over: ({ state, draw }) => {
    const done = Object.keys(state.work).filter((tree) => state.work[tree]?.state === 'done')
    const reason = draw.of([null, 'stubs_left', 'torn_bark'])
    return {
      tree: Number(draw.chance(6) ? aTree(draw) : (draw.of(done) ?? aTree(draw))),
      result: reason === null ? 'passed' : 'reopened',
      reason,
      note: reason !== null && draw.chance(3) ? 'East side' : null,
    }
  },
  confirm_flag: ({ state, draw }) =>
    some('flag', draw.of(flagsOf(state, 'disease')), {
      sign: draw.of(['canker', 'gum']),
      severity: draw.of(['low', 'high']),
      note: draw.of([null, 'Old wood']),
    }),
  follow_up_flag: ({ state, draw }) =>
    some('flag', draw.of(Object.keys(state.flags)), { note: 'Rang the arborist' }),
  change_keep_out: ({ state, draw }) =>
    some('flag', draw.of(flagsOf(state, 'arborist')), { keepOutM: draw.of([0, 4, 6, 15]) }),
  clear_flag: ({ state, draw }) =>
    some('flag', draw.of(flagsOf(state, 'arborist')), {
      done: 'Limb lowered',
      doneBy: 'Tall Oak Tree Care',
      doneOn: '2026-11-20',
    }),
  resume_work: ({ state, draw }) => some('stop', draw.of(Object.keys(state.stops))),
}

function flagsOf(state: State, kind: Flag['kind']): string[] {
  return Object.keys(state.flags).filter((id) => state.flags[id]?.kind === kind)
}

function aSkill(draw: Draw) {
  return draw.of(['hand_saw', 'ladder', 'prunes_alone'])
}

function heldTools(state: State): string[] {
  return Object.keys(state.tools).filter((no) => state.tools[no]?.heldBy !== null)
}

function whyFor(ids: string[]): Record<string, string> {
  return Object.fromEntries(ids.map((id) => [id, 'went home']))
}

/** Some time of the planned day, mostly long ago; or just now. */
function onPaper(draw: Draw): string {
  const hour = 8 + draw.number(9)
  return draw.chance(4)
    ? new Date().toISOString()
    : `2026-11-24T${String(hour).padStart(2, '0')}:00:00.000Z`
}

function minutesAfter(at: string, minutes: number): string {
  return new Date(Date.parse(at) + minutes * 60_000).toISOString()
}
