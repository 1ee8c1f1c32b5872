/**
 * What a member of an orchard knows about the day: the referee's snapshot, and the same after every
 * event since. Plain data, so that it can be compared, stored and sent as it is.
 *
 * Leads and managers have everything; a volunteer has `skills`, `consents`, `minors`, `failedEquipment`
 * and `lookedOver` of the persons their own login acts for only, and never `late`.
 * Names, briefing texts and notes are not here: no typed text about people is in events (see lib/data).
 */

import type { Weather } from '@/lib/domain/safety/weather'

export type Role = 'manager' | 'lead' | 'volunteer' | 'visitor'
export type Skill = 'hand_saw' | 'ladder' | 'prunes_alone'
export type ToolKind = 'pruner' | 'lopper' | 'saw' | 'pole_pruner' | 'ladder' | 'other'
export type WorkState = 'begun' | 'done' | 'left_out'
export type Part = 'holder' | 'helper' | 'learner'
export type Severity = 'low' | 'high' | 'danger_now'
export type ReopenReason =
  | 'stubs_left'
  | 'centre_closed'
  | 'crossing_left'
  | 'dead_left'
  | 'too_much_shortened'
  | 'torn_bark'
  | 'wood_hanging'
  | 'not_tidy'
export type BrushGoes = 'burn' | 'chip' | 'bag' | 'pile'
export type OffReason = 'season' | 'rain' | 'wet_wood' | 'wind' | 'thunder' | 'heat' | 'lead'
/** UTC, milliseconds, as JavaScript prints it. */
export type Instant = string
/** YYYY-MM-DD in the orchard's time zone. */
export type DateOnly = string

export type Orchard = {
  name: string
  timeZone: string
  language: 'en' | 'es'
  units: 'metric' | 'us'
  /** Defaults and what the orchard set for itself, merged. */
  houseRules: Record<string, number>
  /** Of the emergency card, which is read apart: names and numbers may stand in it. 0: never written. */
  emergencyVersion: number
  /** Of the picture from above, which is read apart. 0: there never was one. */
  aerialVersion: number
}

/** Somebody who is in the orchard now. Removed people are gone from the state. */
export type Person = { role: Role; admitted: boolean }

export type Round = {
  kind: 'winter' | 'summer' | 'after_harvest' | 'training'
  season: number
  species: string[]
  from: DateOnly
  to: DateOnly
}

/** Scheduled or open; a closed shift is gone from the state. */
export type Shift = {
  roundId: string
  date: DateOnly
  startsAt: Instant
  endsAt: Instant
  state: 'scheduled' | 'open'
  signal: 'horn' | 'whistle' | 'voice'
  /** Latest version written, 0 before the first. */
  briefingVersion: number
  briefingChange: 'first' | 'before_next_tree' | 'come_down' | null
  /** The last version for which everybody came down, 0 without one: who was told less is told again. */
  comeDownVersion: number
  /** Species, or 'ladder', that are off today, and why. */
  off: Record<string, OffReason>
}

/** What the open shift knows of one person who arrived or was briefed. */
export type Attendance = {
  state: 'here' | 'break'
  since: Instant
  /** Arrived, or back from a break that was a rest (lib/domain/safety/heat-duties); what an older app kept lacks it. */
  restedAt?: Instant | undefined
}
export type Briefed = {
  /** Up to which version they were told by a person, or signed by their own hand after that; 0: not briefed. */
  givenVersion: number
  signedVersion: number
}

export type Tool = {
  label: string
  kind: ToolKind
  fit: boolean
  clean: boolean
  heldBy: string | null
  /** Null: the orchard's own. */
  ownedBy: string | null
}

export type Work = { state: WorkState; share: number | null }

export type Claim = {
  /** A tree, or for brush a whole row. */
  tree: number | null
  row: { block: number; row: number } | null
  purpose: 'work' | 'teaching'
  kind: 'prune' | 'brush' | 'other'
  ladder: boolean
  buddyId: string | null
  openedAt: Instant
  people: Record<string, Part>
}

/** What was written with it is read with the tree's notes. */
export type BigCutMark = { mark: string; by: string; photo: string | null }

/** What a lead found when the tree was done; `byId` and `at` are kept where there is something to say. */
export type LookedOver =
  | { result: 'passed' }
  | { result: 'reopened'; reason: ReopenReason; byId: string; at: Instant }

/** A rule that sends a tree to the arborist: a code of lib/domain/safety/refer-rules, or of a newer app's. */
export type ReferReason = {
  code: string
  /** False: nobody could tell. */
  seen: boolean
  /** What was measured, and what was allowed then, in the unit of the rule. */
  value: number | null
  limit: number | null
}

/** Which limb a hazard is about, as far as somebody said it. */
export type FlaggedLimb = { cm: number | null; bearingDeg: number | null }

export type Flag = {
  tree: number
  kind: 'disease' | 'arborist'
  state: 'suspected' | 'confirmed' | 'open'
  sign: string
  severity: Severity
  keepOutM: number | null
  /** Why it is the arborist's. Null: nobody was asked; empty: the rules found nothing, and it was flagged all the same. */
  reasons: ReferReason[] | null
  limb: FlaggedLimb | null
  raisedBy: string
  raisedAt: Instant
  /** Who was at a tree inside the keep-out when it was set; no tree: a row of brush. */
  inside: Record<string, { tree: number | null; out: boolean }>
  /** Ids; a volunteer hears of their own only. */
  photos: string[]
  /** How many notes leads wrote since; a volunteer hears of none. */
  notes: number
}

export type Stop = {
  /** Null: the whole orchard. */
  block: number | null
  calledBy: string
  calledAt: Instant
  resumed: boolean
  /** Person → what they answered to. */
  answers: Record<string, 'stopped' | 'resumed'>
  /** Person → the lead who gave that answer for them: who saw them, not their own phone. */
  seenBy: Record<string, string>
}

export type CallKind = 'question' | 'tool' | 'injury' | 'lost_person'

/** Somebody calls for help. */
export type Call = {
  kind: CallKind
  /** Where they are; of a lost person, where that one was last. */
  tree: number | null
  /** Who is lost; null: somebody who is not on the list. */
  subject: string | null
  calledBy: string
  calledAt: Instant
  /** Who comes. */
  answeredBy: string | null
  answeredAt: Instant | null
}

/** Why people come out of a tree because of the weather, or of what a lead put off. */
export type LeaveWhy = 'thunder' | 'too_windy' | 'too_hot' | 'dark' | 'ladders_off' | 'species_off'

/** Told to come out, and has not said yet that they are. No tree: a row of brush. */
export type Leaving = { claim: string; tree: number | null; why: LeaveWhy; toldAt: Instant }

/** A lead lets a species be pruned although it is off, for these reasons. What was written is read apart. */
export type Exception = { lifts: string[]; because: string; madeBy: string; madeAt: Instant }

export type State = {
  orchardId: string
  epoch: string
  head: number
  channelEpoch: number
  sheetVersion: number
  minClient: number
  me: { personId: string; role: Role }
  orchard: Orchard
  people: Record<string, Person>
  /** Open rounds. */
  rounds: Record<string, Round>
  /** The round whose work is in `work`, `deals` and `marked`: the open shift's, else the one opened last. */
  workRoundId: string | null
  shifts: Record<string, Shift>
  /** Of the open shift; empty without one. */
  attendance: Record<string, Attendance>
  briefed: Record<string, Briefed>
  /** Person → whether the latest check of the open shift passed; of others a volunteer hears passed ones only. */
  equipped: Record<string, boolean>
  tools: Record<string, Tool>
  /** Tree number → work; a tree that is not here is unpruned. */
  work: Record<string, Work>
  /** Tree number → the last that was found there; a volunteer hears of trees they worked on only. */
  lookedOver: Record<string, LookedOver>
  /** Trees whose cut wood is carried away. */
  hauled: Record<string, true>
  /** `rowKey` → where a lead said that the wood of the row goes. */
  brushGoes: Record<string, BrushGoes>
  claims: Record<string, Claim>
  /** Tree number → the one or two people it is kept for. */
  deals: Record<string, string[]>
  /** Tree number → the lead who dealt it. */
  dealtBy: Record<string, string>
  /** Trees on which the big cuts are marked. */
  marked: Record<string, BigCutMark>
  /** Open flags. */
  flags: Record<string, Flag>
  /** Of the open shift. */
  stops: Record<string, Stop>
  /**
   * Calls that nobody has ended. Others than leads know of their own, and whoever is looked for: any of
   * them may have seen that person last.
   */
  calls: Record<string, Call>
  /** Person → skill → last day, or null without an end. */
  skills: Record<string, Partial<Record<Skill, DateOnly | null>>>
  /** Person → latest season with consent to the text in force. */
  consents: Record<string, number>
  minors: Record<string, { guardianId: string | null }>
  /** For leads: person → the shift that closed while nobody knew where they were. */
  notFound: Record<string, string>
  failedEquipment: Record<string, string[]>
  weather: Weather
  /** Which hours to come were brought in last; they are read apart. */
  forecast: string | null
  /** Of the open shift, by species, or of darkness (`darkness`, lib/events/dark). */
  exceptions: Record<string, Exception>
  /** Of the open shift, by person. */
  toLeave: Record<string, Leaving>
}
