/** What somebody might send next, drawn from what a lead knows: often allowed, often not. */

import type { CommandName } from '@/lib/events/commands'
import { missingOfPerson } from '@/lib/events/missing'
import type { Claim, State } from '@/lib/events/state'

import { plainJpeg } from '../supabase/scene'
import { treeNumbers } from './ground'

export type Move = { name: CommandName; args: Record<string, unknown> }

/** Choices made by a list of numbers, so that the same numbers tell the same story. */
export class Draw {
  private next = 0
  constructor(private readonly numbers: readonly number[]) {}

  number(below: number): number {
    const drawn = this.numbers[this.next++ % this.numbers.length] ?? 0
    return drawn % below
  }

  chance(oneIn: number): boolean {
    return this.number(oneIn) === 0
  }

  of<Item>(items: readonly Item[]): Item | undefined {
    return items.length === 0 ? undefined : items[this.number(items.length)]
  }
}

type Situation = { state: State; personId: string; draw: Draw }
/** Null: there is nothing to do it to. */
type Drawn = Record<string, unknown> | null
type Moves = Partial<Record<CommandName, (situation: Situation) => Drawn>>

const moves: Moves = {
  change_orchard: ({ draw }) => ({
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
  remove_person: ({ state, draw }) => ({ subject: anybody(state, draw) }),
  make_invite: ({ draw }) => ({
    kind: 'join',
    role: 'volunteer',
    codeHash: `${'0'.repeat(58)}${100000 + draw.number(900000)}`,
  }),
  give_consent: ({ state, personId }) => ({
    textVersion: 1,
    by: state.minors[personId]?.guardianId ?? null,
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
  close_round: ({ state, draw }) => some('round', draw.of(Object.keys(state.rounds))),
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
  open_shift: ({ state, draw }) => {
    const shift = draw.of(Object.keys(state.shifts))
    return shift === undefined ? null : { shift, off: draw.of([{}, { cherry: 'rain' }]) }
  },
  close_shift: ({ state, draw }) => ({
    why: draw.chance(3)
      ? {
          people: whyFor(Object.keys(state.attendance)),
          claims: whyFor(Object.keys(state.claims)),
          tools: whyFor(heldTools(state)),
        }
      : { people: {}, claims: {}, tools: {} },
  }),
  set_off_today: ({ draw }) => ({
    what: draw.of(['ladder', 'apple', 'cherry']),
    reason: draw.of(['wind', null, null]),
  }),
  write_briefing: ({ state, draw }) => {
    const shift = draw.of(Object.keys(state.shifts))
    const change = draw.of(['before_next_tree', 'come_down'])
    return shift === undefined ? null : { shift, change, topics: [{ code: 'ladders' }] }
  },
  give_briefing: ({ state, draw }) => {
    const here = Object.keys(state.attendance)
    return { people: here.length > 0 && !draw.chance(4) ? here : [anybody(state, draw)] }
  },
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
  add_tool: ({ state, draw }) => ({
    label: 'T',
    kind: draw.of(['pruner', 'saw', 'ladder']),
    ownedBy: draw.chance(3) ? anybody(state, draw) : null,
  }),
  take_tool: ({ state, draw }) => ({
    tool: aTool(state, draw),
    failedItems: draw.chance(8) ? ['blade'] : [],
  }),
  return_tool: ({ state, draw }) => ({ tool: aTool(state, draw) }),
  fail_tool: ({ state, draw }) => ({ tool: aTool(state, draw), failedItems: ['blade'] }),
  mend_tool: ({ state, draw }) => ({ tool: aTool(state, draw) }),
  clean_tool: ({ state, draw }) => ({ tools: [aTool(state, draw)] }),

  deal_trees: ({ state, draw }) => ({
    trees: [...new Set([aTree(draw), aTree(draw), aTree(draw)])],
    to: [...new Set([anybody(state, draw), anybody(state, draw)])],
  }),
  take_back: ({ draw }) => ({ trees: [aTree(draw), aTree(draw)] }),
  mark_big_cuts: ({ draw }) => ({ tree: aTree(draw) }),
  claim_tree: ({ state, personId, draw }) => ({
    tree: aTree(draw),
    kind: draw.of(['prune', 'prune', 'prune', 'brush', 'other']),
    ladder: draw.chance(6),
    helpers: draw.chance(4) ? others(state, personId, draw) : [],
    learners: [],
    buddy: draw.chance(6) ? anybody(state, draw) : null,
  }),
  join_tree: ({ state, draw }) =>
    some('claim', draw.of(Object.keys(state.claims)), { part: draw.of(['helper', 'learner']) }),
  leave_tree: ({ state, draw }) => some('claim', draw.of(Object.keys(state.claims))),
  hand_over: ({ state, personId, draw }) => {
    const to = anybody(state, draw)
    const claim = draw.of(Object.keys(state.claims))
    return claim === undefined || to === personId ? null : { claim, to }
  },
  release_tree: (situation) => {
    const work = workOf(situation)
    return work && { ...work, share: situation.draw.of([null, 30, 70]), note: null }
  },
  finish_tree: (situation) => workOf(situation),
  end_claim: ({ state, draw }) =>
    some('claim', draw.of(Object.keys(state.claims)), {
      howReached: 'Called out to',
      share: draw.of([null, 50]),
    }),
  undo_tree: ({ state, draw }) => ({
    tree: Number(draw.of(Object.keys(state.work)) ?? aTree(draw)),
  }),

  flag_tree: ({ draw }) => ({
    tree: aTree(draw),
    kind: draw.of(['disease', 'disease', 'arborist']),
    sign: 'canker',
    severity: draw.of(['low', 'high', 'danger_now']),
    keepOutM: draw.of([null, 0, 6]),
    share: draw.of([null, 40]),
  }),
  withdraw_flag: ({ state, draw }) => some('flag', draw.of(Object.keys(state.flags))),
  add_photo: ({ draw }) => ({ tree: aTree(draw), purpose: 'before', jpeg: plainJpeg }),

  stop_work: ({ draw }) => ({ block: draw.of([null, 1]) }),
  answer_stop: ({ state, draw }) => some('stop', draw.of(Object.keys(state.stops))),
  resume_work: ({ state, draw }) => some('stop', draw.of(Object.keys(state.stops))),
}

/** How often each is tried, against one for the rest: a day is mostly work on trees. */
const often: Partial<Record<CommandName, number>> = {
  claim_tree: 16,
  finish_tree: 8,
  release_tree: 6,
  sign_briefing: 6,
  arrive: 4,
  check_equipment: 4,
  take_tool: 4,
  answer_stop: 6,
  end_break: 3,
  clean_tool: 3,
  flag_tree: 3,
  join_tree: 3,
  hand_over: 3,
  undo_tree: 4,
  withdraw_flag: 4,

  resume_work: 5,
  give_briefing: 4,
  deal_trees: 4,
  set_off_today: 3,
  mend_tool: 3,
  open_shift: 3,
  end_claim: 2,
}

const names = Object.keys(moves) as CommandName[]
const leadsOnly = new Set<CommandName>([
  ...['change_orchard', 'add_person', 'change_person', 'admit_person', 'remove_person'],
  ...['make_invite', 'grant_skill', 'end_skill', 'open_round', 'close_round', 'schedule_shift'],
  ...['open_shift', 'close_shift', 'set_off_today', 'write_briefing', 'give_briefing', 'add_tool'],
  ...['mend_tool', 'deal_trees', 'take_back', 'end_claim', 'resume_work'],
] as CommandName[])
const everything = lotOf(names)
const own = lotOf(names.filter((name) => !leadsOnly.has(name)))

function lotOf(each: CommandName[]): CommandName[] {
  return each.flatMap((name) => Array.from({ length: often[name] ?? 1 }, () => name))
}

/** What helps against what is missing. */
const cures: Record<string, CommandName> = {
  shift_not_open: 'open_shift',
  stopped: 'resume_work',
  stop_not_answered: 'answer_stop',
  not_arrived: 'arrive',
  on_break: 'end_break',
  consent_missing: 'give_consent',
  briefing_not_given: 'give_briefing',
  briefing_not_signed: 'sign_briefing',
  equipment_not_checked: 'check_equipment',
  no_tool_in_hand: 'take_tool',
  tool_failed: 'return_tool',
  tool_not_clean: 'clean_tool',
  holds_another: 'finish_tree',
}

/** Every other time something sensible; volunteers mostly leave alone what is a lead's. */
export function drawMove(situation: Situation & { isLead: boolean }): Move | null {
  const { state, personId, draw, isLead } = situation
  const [missing] = missingOfPerson(state, personId)
  const sensible = missing ? cures[missing.code] : 'claim_tree'
  const name =
    draw.chance(2) && sensible ? sensible : draw.of(isLead || draw.chance(20) ? everything : own)
  const args = name && moves[name]?.(situation)
  return name && args ? { name, args } : null
}

function some(key: string, id: string | undefined, more: Record<string, unknown> = {}): Drawn {
  return id === undefined ? null : { [key]: id, ...more }
}

function anybody(state: State, draw: Draw): string {
  return draw.of(Object.keys(state.people)) ?? state.me.personId
}

function others(state: State, personId: string, draw: Draw): string[] {
  const other = anybody(state, draw)
  return other === personId ? [] : [other]
}

function aTree(draw: Draw): number {
  return draw.of(treeNumbers) ?? 1
}

function aTool(state: State, draw: Draw): number {
  return Number(draw.of(Object.keys(state.tools)) ?? 1)
}

function aSkill(draw: Draw) {
  return draw.of(['hand_saw', 'ladder', 'prunes_alone'])
}

function openShiftOf(state: State) {
  return Object.values(state.shifts).find((shift) => shift.state === 'open')
}

function heldTools(state: State): string[] {
  return Object.keys(state.tools).filter((no) => state.tools[no]?.heldBy !== null)
}

function whyFor(ids: string[]): Record<string, string> {
  return Object.fromEntries(ids.map((id) => [id, 'went home']))
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
