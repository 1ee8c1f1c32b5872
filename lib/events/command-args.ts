/** What each command takes, besides the orchard, its own id and the person whose work it is. */

import * as z from 'zod/mini'

import {
  briefingChange,
  claimKind,
  dateOnly,
  flagKind,
  id,
  instant,
  language,
  number,
  offReason,
  orNull,
  part,
  purpose,
  role,
  roundKind,
  severity,
  signal,
  skill,
  stopAnswer,
  text,
  toolKind,
  units,
} from './shapes'

const none = z.object({})
const note = orNull(text)
const items = z._default(z.array(text), [])
const people = z._default(z.array(id), [])
const at = orNull(instant)
const reasons = z._default(z.record(text, text), {})
const ageBand = z.enum(['adult', 'minor'])
const person = {
  name: text,
  role,
  ageBand: z._default(ageBand, 'adult'),
  guardian: orNull(id),
  phone: orNull(text),
}
/** A tree begun without signal has no claim, but a time. */
const work = { claim: orNull(id), tree: number, begunAt: at, at, elapsedS: orNull(number) }

export const commandArgs = {
  create_orchard: z.object({
    code: text,
    name: text,
    personName: text,
    timeZone: text,
    language,
    units,
  }),
  redeem: z.object({ code: text, name: orNull(text), ageBand: orNull(ageBand) }),

  change_orchard: z.object({
    name: orNull(text),
    language: orNull(language),
    units: orNull(units),
    houseRules: orNull(z.record(text, z.number())),
    emergency: orNull(z.record(text, text)),
  }),

  add_person: z.object(person),
  change_person: z.object({
    subject: id,
    name: orNull(text),
    role: orNull(role),
    ageBand: orNull(ageBand),
    guardian: orNull(id),
    phone: orNull(text),
  }),
  admit_person: z.object({ subject: id }),
  remove_person: z.object({ subject: id }),
  end_login: z.object({ login: orNull(id) }),
  make_invite: z.object({
    kind: z.enum(['join', 'role', 'device', 'recovery']),
    role: orNull(role),
    shift: orNull(id),
    subject: orNull(id),
    codeHash: text,
    hours: orNull(number),
  }),
  end_invite: z.object({ invite: id }),
  give_consent: z.object({ by: orNull(id), textVersion: number }),
  grant_skill: z.object({ subject: id, skill, until: orNull(dateOnly) }),
  end_skill: z.object({ subject: id, skill }),

  open_round: z.object({
    kind: roundKind,
    season: number,
    species: z.array(text),
    from: dateOnly,
    to: dateOnly,
  }),
  close_round: z.object({ round: id }),
  schedule_shift: z.object({
    round: id,
    date: dateOnly,
    startsAt: instant,
    endsAt: instant,
    signal,
  }),
  open_shift: z.object({ shift: id, off: z._default(z.record(text, offReason), {}) }),
  close_shift: z.object({
    why: z._default(z.object({ people: reasons, claims: reasons, tools: reasons }), {
      people: {},
      claims: {},
      tools: {},
    }),
  }),
  set_off_today: z.object({ what: text, reason: orNull(offReason) }),

  write_briefing: z.object({
    shift: id,
    topics: z.array(z.object({ code: text, en: z.optional(text), es: z.optional(text) })),
    change: briefingChange,
  }),
  give_briefing: z.object({ people: z.array(id) }),
  sign_briefing: z.object({
    version: number,
    language,
    how: z.enum(['heard', 'read_to_me', 'read']),
  }),

  arrive: none,
  start_break: z.object({ at }),
  end_break: z.object({ at }),
  leave: z.object({ at }),

  check_equipment: z.object({ failedItems: items }),
  add_tool: z.object({ label: text, kind: toolKind, ownedBy: orNull(id) }),
  take_tool: z.object({ tool: number, failedItems: items }),
  return_tool: z.object({ tool: number }),
  fail_tool: z.object({ tool: number, failedItems: items, note }),
  mend_tool: z.object({ tool: number }),
  clean_tool: z.object({ tools: z.array(number) }),

  /** The rows as supabase/README.md has them; the referee names every wrong one. */
  bring_in_trees: z.object({
    blocks: z.array(z.unknown()),
    cultivars: z.array(z.unknown()),
    trees: z.array(z.unknown()),
  }),
  deal_trees: z.object({ trees: z.array(number), to: z.array(id) }),
  take_back: z.object({ trees: z.array(number) }),
  mark_big_cuts: z.object({ tree: number, note, photo: orNull(id) }),

  claim_tree: z.object({
    tree: number,
    purpose: z._default(purpose, 'work'),
    kind: z._default(claimKind, 'prune'),
    ladder: z._default(z.boolean(), false),
    helpers: people,
    learners: people,
    buddy: orNull(id),
  }),
  join_tree: z.object({ claim: id, part: z._default(part, 'helper') }),
  leave_tree: z.object({ claim: id }),
  hand_over: z.object({ claim: id, to: id }),
  release_tree: z.object({ ...work, share: orNull(number), note }),
  finish_tree: z.object(work),
  end_claim: z.object({ claim: id, howReached: text, share: orNull(number) }),
  undo_tree: z.object({ tree: number }),

  flag_tree: z.object({
    tree: number,
    kind: flagKind,
    sign: text,
    severity,
    part: orNull(text),
    note,
    keepOutM: orNull(z.number()),
    share: orNull(number),
  }),
  withdraw_flag: z.object({ flag: id }),
  add_photo: z.object({
    tree: orNull(number),
    flag: orNull(id),
    claim: orNull(id),
    purpose: z.enum(['flag', 'before', 'after', 'mark']),
    jpeg: text,
  }),

  stop_work: z.object({ block: orNull(number), reason: note }),
  /** Null: to whatever the stop asks now. */
  answer_stop: z.object({ stop: id, answer: orNull(stopAnswer) }),
  resume_work: z.object({ stop: id }),

  hand_in: z.object({ work: z.array(z.unknown()) }),
}
