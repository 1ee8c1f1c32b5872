/** What each command takes, besides the orchard, its own id and the person whose work it is. */

import * as shape from '@/lib/util/shape'

import { argsAfterPruning } from './args-after-pruning'
import { argsOfGround } from './args-of-ground'
import { argsOfInventory } from './args-of-inventory'
import { argsOfPaper } from './args-of-paper'
import { argsOfRooms } from './args-of-rooms'
import { argsOfWeather } from './args-of-weather'
import {
  briefingChange,
  callKind,
  claimKind,
  dateOnly,
  flagKind,
  id,
  incidentKind,
  instant,
  language,
  limb,
  number,
  offReason,
  orNull,
  part,
  purpose,
  referReasons,
  role,
  severity,
  signal,
  skill,
  stopAnswer,
  text,
  toolKind,
  units,
} from './shapes'

const none = shape.object({})
const note = orNull(text)
const items = shape.withDefault(shape.array(text), [])
const people = shape.withDefault(shape.array(id), [])
const at = orNull(instant)
const reasons = shape.withDefault(shape.record(text, text), {})
const ageBand = shape.oneOf(['adult', 'minor'])
const person = {
  name: text,
  role,
  ageBand: shape.withDefault(ageBand, 'adult'),
  guardian: orNull(id),
  phone: orNull(text),
}
/** A tree begun without signal has no claim, but a time. */
const work = { claim: orNull(id), tree: number, begunAt: at, at, elapsedS: orNull(number) }

export const commandArgs = {
  create_orchard: shape.object({
    code: text,
    name: text,
    personName: text,
    timeZone: text,
    language,
    units,
  }),
  redeem: shape.object({ code: text, name: orNull(text), ageBand: orNull(ageBand) }),

  change_orchard: shape.object({
    name: orNull(text),
    language: orNull(language),
    units: orNull(units),
    houseRules: orNull(shape.record(text, shape.number)),
    emergency: orNull(shape.record(text, text)),
  }),
  /** Points: x and y in ten-thousandths of the picture, then 1e-7 degrees. Jpeg null: the picture that is there. */
  place_aerial: shape.object({
    points: shape.array(shape.tuple([number, number, number, number])),
    opacity: number,
    jpeg: orNull(text),
  }),
  remove_aerial: shape.object({}),

  add_person: shape.object(person),
  change_person: shape.object({
    subject: id,
    name: orNull(text),
    role: orNull(role),
    ageBand: orNull(ageBand),
    guardian: orNull(id),
    phone: orNull(text),
  }),
  admit_person: shape.object({ subject: id }),
  remove_person: shape.object({ subject: id }),
  end_login: shape.object({ login: orNull(id) }),
  make_invite: shape.object({
    kind: shape.oneOf(['join', 'role', 'device', 'recovery']),
    role: orNull(role),
    shift: orNull(id),
    subject: orNull(id),
    codeHash: text,
    hours: orNull(number),
  }),
  end_invite: shape.object({ invite: id }),
  give_consent: shape.object({ by: orNull(id), textVersion: number }),
  grant_skill: shape.object({ subject: id, skill, until: orNull(dateOnly) }),
  end_skill: shape.object({ subject: id, skill }),

  schedule_shift: shape.object({
    round: id,
    date: dateOnly,
    startsAt: instant,
    endsAt: instant,
    signal,
  }),
  change_shift: shape.object({
    shift: id,
    date: dateOnly,
    startsAt: instant,
    endsAt: instant,
    signal,
  }),
  cancel_shift: shape.object({ shift: id }),
  open_shift: shape.object({
    shift: id,
    off: shape.withDefault(shape.record(text, offReason), {}),
  }),
  close_shift: shape.object({
    why: shape.withDefault(shape.object({ people: reasons, claims: reasons, tools: reasons }), {
      people: {},
      claims: {},
      tools: {},
    }),
    notFound: people,
  }),
  set_off_today: shape.object({ what: text, reason: orNull(offReason) }),

  write_briefing: shape.object({
    shift: id,
    topics: shape.array(
      shape.object({ code: text, en: shape.optional(text), es: shape.optional(text) })
    ),
    change: briefingChange,
  }),
  give_briefing: shape.object({ people: shape.array(id) }),
  sign_briefing: shape.object({
    version: number,
    language,
    how: shape.oneOf(['heard', 'read_to_me', 'read']),
  }),

  arrive: none,
  found_person: shape.object({ subject: id }),
  start_break: shape.object({ at }),
  end_break: shape.object({ at }),
  leave: shape.object({ at }),

  check_equipment: shape.object({ failedItems: items }),
  add_tool: shape.object({ label: text, kind: toolKind, ownedBy: orNull(id) }),
  take_tool: shape.object({ tool: number, failedItems: items }),
  return_tool: shape.object({ tool: number }),
  fail_tool: shape.object({ tool: number, failedItems: items, note }),
  mend_tool: shape.object({ tool: number }),
  clean_tool: shape.object({ tools: shape.array(number) }),

  ...argsOfInventory,
  ...argsOfGround,
  deal_trees: shape.object({ trees: shape.array(number), to: shape.array(id) }),
  take_back: shape.object({ trees: shape.array(number) }),
  mark_big_cuts: shape.object({ tree: number, note }),
  unmark_big_cuts: shape.object({ tree: number }),

  claim_tree: shape.object({
    tree: number,
    purpose: shape.withDefault(purpose, 'work'),
    kind: shape.withDefault(claimKind, 'prune'),
    ladder: shape.withDefault(shape.boolean, false),
    helpers: people,
    learners: people,
    buddy: orNull(id),
  }),
  join_tree: shape.object({ claim: id, part: shape.withDefault(part, 'helper') }),
  leave_tree: shape.object({ claim: id }),
  /** How the holder was reached: needed where somebody else hands their tree on. */
  hand_over: shape.object({ claim: id, to: id, howReached: orNull(text) }),
  release_tree: shape.object({ ...work, share: orNull(number), note }),
  finish_tree: shape.object(work),
  end_claim: shape.object({ claim: id, howReached: text, share: orNull(number) }),
  undo_tree: shape.object({ tree: number }),

  ...argsAfterPruning,
  ...argsOfRooms,

  flag_tree: shape.object({
    tree: number,
    kind: flagKind,
    sign: text,
    severity,
    part: orNull(text),
    note,
    keepOutM: orNull(shape.number),
    share: orNull(number),
    reasons: referReasons,
    limb,
  }),
  withdraw_flag: shape.object({ flag: id, note }),
  confirm_flag: shape.object({ flag: id, sign: text, severity, part: orNull(text), note }),
  follow_up_flag: shape.object({ flag: id, note: text }),
  change_keep_out: shape.object({ flag: id, keepOutM: shape.number }),
  answer_keep_out: shape.object({ flag: id }),
  clear_flag: shape.object({ flag: id, done: text, doneBy: text, doneOn: dateOnly }),
  add_photo: shape.object({
    tree: orNull(number),
    flag: orNull(id),
    claim: orNull(id),
    mark: orNull(id),
    purpose: shape.oneOf(['flag', 'before', 'after', 'mark']),
    jpeg: text,
  }),

  stop_work: shape.object({ block: orNull(number), reason: note }),
  /** Null: to whatever the stop asks now. */
  answer_stop: shape.object({ stop: id, answer: orNull(stopAnswer) }),
  resume_work: shape.object({ stop: id }),

  call_for_help: shape.object({
    kind: callKind,
    tree: orNull(number),
    subject: orNull(id),
    note,
    at,
  }),
  answer_call: shape.object({ call: id }),
  end_call: shape.object({ call: id, outcome: note }),
  write_incident: shape.object({
    kind: incidentKind,
    tree: orNull(number),
    note,
    at,
    call: orNull(id),
  }),
  ...argsOfPaper,
  ...argsOfWeather,

  hand_in: shape.object({ work: shape.array(shape.anything) }),
  accept_hand_in: shape.object({ handIn: id }),
}
