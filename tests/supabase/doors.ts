/**
 * Every function that clients can call: who may, with what, and what becomes of it in each state of
 * the shift. A door that is missing here fails the catalogue test and the matrix.
 */

import { always, inShift, nothing, onceThereIs, onlyPlanned, type Use } from './door'
import { doorsAfterPruning } from './doors-after-pruning'
import { doorsOfArchives } from './doors-of-archives'
import { doorsOfCalls } from './doors-of-calls'
import { doorsOfFlags } from './doors-of-flags'
import { doorsOfGround } from './doors-of-ground'
import { doorsOfPaper } from './doors-of-paper'
import { doorsOfPeople } from './doors-of-people'
import { doorsOfRooms } from './doors-of-rooms'
import { doorsOfWeather } from './doors-of-weather'
import { plainJpeg, sha256 } from './scene'

export const doors: Record<string, Use[]> = {
  ...doorsAfterPruning,
  ...doorsOfArchives,
  ...doorsOfGround,
  ...doorsOfPaper,
  ...doorsOfPeople,
  ...doorsOfRooms,
  ...doorsOfWeather,
  create_orchard: [
    {
      right: 'anybody',
      args: ({ code }) => ({
        p_code: code.setUp,
        p_name: 'Long Meadow',
        p_person_name: 'First',
        p_time_zone: 'UTC',
        p_language: 'es',
        p_units: 'us',
      }),
      outcome: always,
    },
  ],
  redeem: [
    {
      as: 'join',
      right: 'anybody',
      args: ({ code }) => ({ p_code: code.join, p_name: 'New', p_age_band: 'adult' }),
      outcome: { else: 'ok', closed: 'refused: code_expired' },
    },
    {
      as: 'role',
      right: 'anybody',
      args: ({ code }) => ({ p_code: code.role, p_name: 'New lead', p_age_band: 'adult' }),
      outcome: always,
    },
    {
      as: 'device',
      right: 'anybody',
      args: ({ code }) => ({ p_code: code.device }),
      outcome: always,
    },
  ],
  look_at_invite: [
    { right: 'anybody', args: ({ code }) => ({ p_code: code.role }), outcome: always },
  ],

  change_orchard: [{ right: 'manager', args: () => ({ p_name: 'Four Wells' }), outcome: always }],
  add_person: [{ right: 'lead', args: () => ({ p_name: 'Hal' }), outcome: always }],
  change_person: [
    {
      right: 'lead',
      args: ({ person }) => ({ p_subject: person.bo, p_phone: '555 0100' }),
      outcome: always,
    },
  ],
  admit_person: [
    { right: 'lead', args: ({ person }) => ({ p_subject: person.gus }), outcome: always },
  ],
  remove_person: [
    { right: 'lead', args: ({ person }) => ({ p_subject: person.bo }), outcome: always },
  ],
  end_login: [{ right: 'self', args: ({ login }) => ({ p_login: login }), outcome: always }],
  make_invite: [
    {
      as: 'join',
      right: 'lead',
      args: () => ({ p_kind: 'join', p_role: 'volunteer', p_code_hash: sha256('join') }),
      outcome: always,
    },
    {
      as: 'role',
      right: 'manager',
      args: () => ({ p_kind: 'role', p_role: 'lead', p_code_hash: sha256('role') }),
      outcome: always,
    },
    {
      as: 'device',
      right: 'self',
      args: () => ({ p_kind: 'device', p_code_hash: sha256('device') }),
      outcome: always,
    },
    {
      as: 'device for somebody',
      right: 'lead',
      args: ({ person }) => ({
        p_kind: 'device',
        p_subject: person.bo,
        p_code_hash: sha256('device'),
      }),
      outcome: always,
    },
  ],
  end_invite: [{ right: 'lead', args: ({ invite }) => ({ p_invite: invite }), outcome: always }],
  give_consent: [
    {
      right: 'self',
      whose: 'dee',
      args: () => ({ p_by: null, p_text_version: 1 }),
      outcome: always,
    },
  ],
  grant_skill: [
    {
      right: 'lead',
      args: ({ person }) => ({ p_subject: person.bo, p_skill: 'ladder' }),
      outcome: always,
    },
  ],
  end_skill: [
    {
      right: 'lead',
      args: ({ person }) => ({ p_subject: person.bo, p_skill: 'prunes_alone' }),
      outcome: always,
    },
  ],

  bring_in_trees: [
    {
      right: 'manager',
      args: () => ({
        p_blocks: [],
        p_cultivars: [],
        p_trees: [{ block: 'A', row: 9, place: 1, species: 'apple' }],
        p_changes: [{ tree: 40, species: 'apple', heightCm: 250 }],
      }),
      outcome: always,
    },
  ],
  open_round: [
    {
      right: 'manager',
      args: () => ({
        p_kind: 'summer',
        p_season: 2027,
        p_species: ['apple'],
        p_from: '2027-06-01',
        p_to: '2027-08-01',
      }),
      outcome: always,
    },
  ],
  schedule_shift: [
    {
      right: 'lead',
      args: ({ round }) => ({
        p_round: round,
        p_date: '2026-11-25',
        p_starts_at: '2026-11-25T08:00:00Z',
        p_ends_at: '2026-11-25T12:00:00Z',
        p_signal: 'whistle',
      }),
      outcome: always,
    },
  ],
  change_shift: [
    {
      right: 'lead',
      args: ({ shift }) => ({
        p_shift: shift,
        p_date: '2026-11-26',
        p_starts_at: '2026-11-26T08:00:00Z',
        p_ends_at: '2026-11-26T12:00:00Z',
        p_signal: 'whistle',
      }),
      outcome: onlyPlanned,
    },
  ],
  cancel_shift: [
    { right: 'lead', args: ({ shift }) => ({ p_shift: shift }), outcome: onlyPlanned },
  ],
  open_shift: [
    {
      right: 'lead',
      args: ({ shift }) => ({ p_shift: shift, p_off: { cherry: 'season' } }),
      outcome: {
        else: 'ok',
        none: '404 no_such_shift',
        open: 'refused: shift_open',
        stopped: 'refused: shift_open',
        closed: 'refused: shift_closed',
      },
    },
  ],
  close_shift: [
    {
      right: 'lead',
      args: nothing,
      outcome: { ...inShift(), else: 'refused: still_signed_in, tools_out, trees_held' },
    },
    {
      as: 'with a reason for each',
      right: 'lead',
      args: ({ person, claim, brush }) => ({
        p_why: {
          people: Object.fromEntries(Object.values(person).map((id) => [id, 'went home'])),
          claims: { [claim]: 'dusk', [brush]: 'dusk' },
          tools: { 1: 'in the van', 2: 'in the van', 3: 'in the van' },
        },
      }),
      outcome: inShift(),
    },
  ],
  set_off_today: [
    { right: 'lead', args: () => ({ p_what: 'ladder', p_reason: 'wind' }), outcome: inShift() },
  ],
  write_briefing: [
    {
      right: 'lead',
      args: ({ shift }) => ({
        p_shift: shift,
        p_topics: [{ code: 'wasps' }],
        p_change: 'come_down',
      }),
      outcome: { else: 'ok', none: '404 no_such_shift', closed: 'refused: shift_closed' },
    },
  ],
  give_briefing: [
    { right: 'lead', args: ({ person }) => ({ p_people: [person.ann] }), outcome: inShift() },
  ],
  sign_briefing: [
    {
      right: 'self',
      args: () => ({ p_version: 1, p_language: 'es', p_how: 'read' }),
      outcome: inShift(),
    },
  ],

  arrive: [
    { right: 'self', whose: 'dee', args: nothing, outcome: inShift() },
    {
      as: 'twice',
      right: 'self',
      args: nothing,
      outcome: { ...inShift(), else: 'refused: already_here' },
    },
    {
      as: 'not let in',
      right: 'self',
      whose: 'gus',
      args: nothing,
      outcome: { ...inShift('not_admitted, shift_not_open'), else: 'refused: not_admitted' },
    },
  ],
  start_break: [{ right: 'self', args: nothing, outcome: inShift() }],
  end_break: [{ right: 'self', whose: 'eve', args: nothing, outcome: inShift() }],
  leave: [
    { right: 'self', whose: 'eve', args: nothing, outcome: inShift() },
    {
      as: 'with a tree and a tool',
      right: 'self',
      whose: 'bo',
      args: nothing,
      outcome: { ...inShift(), else: 'refused: holds_another, tools_out' },
    },
  ],
  check_equipment: [
    { right: 'self', args: () => ({ p_failed_items: ['gloves'] }), outcome: inShift() },
  ],
  add_tool: [{ right: 'lead', args: () => ({ p_label: 'S1', p_kind: 'saw' }), outcome: always }],
  take_tool: [
    { right: 'self', args: () => ({ p_tool: 4, p_failed_items: [] }), outcome: inShift() },
  ],
  return_tool: [{ right: 'self', args: () => ({ p_tool: 1 }), outcome: inShift('not_in_hand') }],
  fail_tool: [
    {
      right: 'self',
      args: () => ({ p_tool: 1, p_failed_items: ['blade'], p_note: 'Nicked' }),
      outcome: always,
    },
  ],
  mend_tool: [{ right: 'lead', args: () => ({ p_tool: 1 }), outcome: always }],
  clean_tool: [{ right: 'self', args: () => ({ p_tools: [1, 2] }), outcome: always }],

  deal_trees: [
    {
      right: 'lead',
      args: ({ person }) => ({ p_trees: [10, 11], p_to: [person.ann] }),
      outcome: always,
    },
    {
      as: 'one in progress',
      right: 'lead',
      args: ({ person }) => ({ p_trees: [2, 10], p_to: [person.ann] }),
      outcome: {
        else: 'ok',
        open: 'refused: tree_in_progress',
        stopped: 'refused: tree_in_progress',
      },
    },
  ],
  take_back: [{ right: 'lead', args: () => ({ p_trees: [10] }), outcome: always }],
  unmark_big_cuts: [{ right: 'lead', args: () => ({ p_tree: 12 }), outcome: always }],
  mark_big_cuts: [
    {
      right: 'self',
      args: () => ({ p_tree: 12, p_note: 'The two water shoots' }),
      outcome: always,
    },
    {
      as: 'without the skill',
      right: 'self',
      whose: 'cy',
      args: () => ({ p_tree: 12 }),
      outcome: { else: 'refused: skill_missing' },
      byLead: 'ok',
    },
  ],

  claim_tree: [
    {
      right: 'self',
      args: () => ({ p_tree: 5 }),
      outcome: { ...inShift(), stopped: 'refused: stopped' },
    },
    {
      as: 'held by another',
      right: 'self',
      args: () => ({ p_tree: 2 }),
      outcome: { ...inShift(), open: 'refused: tree_held', stopped: 'refused: stopped, tree_held' },
    },
  ],
  join_tree: [
    {
      right: 'self',
      args: ({ claim }) => ({ p_claim: claim, p_part: 'learner' }),
      outcome: {
        else: '404 no_such_claim',
        open: 'ok',
        stopped: 'refused: stopped',
        closed: 'refused: claim_over',
      },
    },
  ],
  leave_tree: [
    {
      right: 'self',
      whose: 'cy',
      args: ({ claim }) => ({ p_claim: claim }),
      outcome: {
        else: '404 no_such_claim',
        open: 'ok',
        stopped: 'ok',
        closed: 'refused: not_in_claim',
      },
    },
  ],
  hand_over: [
    {
      right: 'self',
      whose: 'bo',
      args: ({ claim, person }) => ({
        p_claim: claim,
        p_to: person.ann,
        p_how_reached: 'Spoke in person',
      }),
      outcome: {
        else: '404 no_such_claim',
        open: 'ok',
        stopped: 'refused: stopped',
        closed: 'refused: claim_over',
      },
    },
  ],
  release_tree: [
    {
      right: 'self',
      whose: 'bo',
      args: ({ claim }) => ({ p_claim: claim, p_tree: 2, p_share: 40, p_note: 'East side left' }),
      outcome: { else: '404 no_such_claim', open: 'ok', stopped: 'ok', closed: 'ok' },
    },
  ],
  finish_tree: [
    {
      right: 'self',
      whose: 'bo',
      args: ({ claim }) => ({ p_claim: claim, p_tree: 2, p_elapsed_s: 900 }),
      outcome: { else: '404 no_such_claim', open: 'ok', stopped: 'ok', closed: 'ok' },
    },
  ],
  end_claim: [
    {
      right: 'lead',
      args: ({ claim }) => ({ p_claim: claim, p_how_reached: 'Called out to' }),
      outcome: {
        else: '404 no_such_claim',
        open: 'ok',
        stopped: 'ok',
        closed: 'refused: claim_over',
      },
    },
  ],
  undo_tree: [
    {
      right: 'self',
      args: () => ({ p_tree: 20 }),
      outcome: { else: 'refused: nothing_to_undo', open: 'ok', stopped: 'refused: stopped' },
    },
  ],

  add_photo: [
    {
      right: 'self',
      args: () => ({ p_jpeg: plainJpeg, p_purpose: 'before', p_tree: 5 }),
      outcome: always,
    },
  ],
  stop_work: [
    { right: 'self', args: () => ({ p_block: 1, p_reason: 'Thunder' }), outcome: inShift() },
  ],
  answer_stop: [
    {
      right: 'self',
      args: ({ stop }) => ({ p_stop: stop }),
      outcome: { else: '404 no_such_stop', stopped: 'ok', closed: 'ok' },
    },
  ],
  resume_work: [
    {
      right: 'lead',
      args: ({ stop }) => ({ p_stop: stop }),
      outcome: { else: '404 no_such_stop', stopped: 'ok', closed: 'ok' },
    },
  ],
  ...doorsOfCalls,
  ...doorsOfFlags,
  hand_in: [
    {
      right: 'gone',
      whose: 'fay',
      args: () => ({ p_work: [{ tree: 3, result: 'done' }] }),
      outcome: always,
    },
  ],

  my_orchards: [{ right: 'anybody', args: nothing, outcome: always }],
  snapshot: [{ right: 'own', args: nothing, outcome: always }],
  events_after: [
    {
      right: 'own',
      args: ({ epoch }) => ({ p_epoch: epoch, p_n: 0 }),
      outcome: always,
      anyIds: true,
    },
  ],
  heartbeat: [{ right: 'own', args: () => ({ p_head: 0 }), outcome: always }],
  tree_sheet: [{ right: 'member', args: () => ({ p_version: 1 }), outcome: always }],
  emergency_card: [{ right: 'member', args: nothing, outcome: always }],
  names: [{ right: 'member', args: nothing, outcome: always }],
  private_people: [{ right: 'reads-lead', args: nothing, outcome: always }],
  read_briefing: [
    {
      right: 'member',
      args: ({ shift }) => ({ p_shift: shift }),
      outcome: onceThereIs('404 no_such_shift'),
    },
  ],
  read_photo: [{ right: 'self', args: ({ photo }) => ({ p_photo: photo }), outcome: always }],
  tree_notes: [{ right: 'member', args: () => ({ p_tree: 2 }), outcome: always }],
}
