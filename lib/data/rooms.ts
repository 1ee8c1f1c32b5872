/** What managers look up, as the backend says it: history, hours, links, rounds, shifts, the audit trail. */

import type { Outcome } from '@/lib/events/answer'
import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

import { treeHistory } from './tree-history'
import { closeWatch, exceptions, forecast } from './weather'

export type { ThingOfTree, TreeHistory } from './tree-history'
export type { CloseWatchRead, ExceptionRead, Forecast } from './weather'

const { id, number, text, instant, dateOnly, orNull } = shapes

/** Of people who left, too; who was forgotten has none. */
const names = shape.record(text, text)

/** As in the record of one shift. */
const hoursOfPerson = shape.object({
  person: id,
  hereS: number,
  breakS: number,
  done: number,
  begun: number,
  helped: number,
})
const volunteerHours = shape.object({
  season: orNull(number),
  seasons: shape.array(number),
  shifts: shape.array(
    shape.object({
      shift: id,
      round: id,
      kind: shapes.roundKind,
      date: dateOnly,
      state: shape.oneOf(['open', 'closed']),
      people: shape.array(hoursOfPerson),
    })
  ),
  names,
})
export type VolunteerHours = shape.Out<typeof volunteerHours>

const workTimes = shape.object({
  at: instant,
  /** Tree, shift, round, result, seconds, people, teaching. */
  visits: shape.array(
    shape.tuple([
      number,
      id,
      id,
      shape.oneOf(['done', 'begun', 'also_worked']),
      orNull(number),
      number,
      shape.boolean,
    ])
  ),
  shifts: shape.array(shape.object({ shift: id, hereS: number, breakS: number })),
})
export type WorkTimes = shape.Out<typeof workTimes>

const myHours = shape.array(
  shape.object({ shift: id, season: number, date: dateOnly, hereS: number, breakS: number })
)
export type MyHours = shape.Out<typeof myHours>

const invites = shape.object({
  invites: shape.array(
    shape.object({
      invite: id,
      kind: shape.oneOf(['join', 'role', 'device', 'recovery']),
      role: shapes.role,
      person: orNull(id),
      shiftDate: orNull(dateOnly),
      /** Null: by the host itself, when it started. */
      madeBy: orNull(id),
      madeAt: instant,
      expiresAt: instant,
      endedAt: orNull(instant),
      used: number,
      over: orNull(shape.oneOf(['code_expired', 'code_used'])),
    })
  ),
  names,
})
export type Invites = shape.Out<typeof invites>

const rounds = shape.array(
  shape.object({
    round: id,
    kind: shapes.roundKind,
    season: number,
    species: shape.array(text),
    from: dateOnly,
    to: dateOnly,
    openedAt: instant,
    closedAt: orNull(instant),
    trees: number,
    done: number,
    begun: number,
    leftOut: number,
    planned: number,
    held: number,
  })
)
export type RoundRead = shape.Out<typeof rounds>[number]

const shifts = shape.array(
  shape.object({
    shift: id,
    round: id,
    kind: shapes.roundKind,
    season: number,
    date: dateOnly,
    state: shape.oneOf(['open', 'closed', 'cancelled']),
    openedAt: orNull(instant),
    closedAt: orNull(instant),
    people: number,
    done: number,
  })
)
export type ShiftRead = shape.Out<typeof shifts>[number]

const peopleWhoLeft = shape.array(
  shape.object({ person: id, name: text, role: shapes.role, addedAt: instant, removedAt: instant })
)
export type PersonWhoLeft = shape.Out<typeof peopleWhoLeft>[number]

const beforeForgetting = shape.object({
  person: id,
  name: orNull(text),
  role: shapes.role,
  addedAt: instant,
  removedAt: orNull(instant),
  shifts: number,
  lastShift: orNull(dateOnly),
  workedS: number,
  trees: number,
  inTheWay: shape.array(
    shape.object({ code: text, detail: shape.optional(shape.record(text, shape.anything)) })
  ),
  onCard: shape.boolean,
  inBriefings: number,
  incidents: number,
})
export type BeforeForgetting = shape.Out<typeof beforeForgetting>

const auditTrail = shape.object({
  events: shape.array(
    shape.object({
      n: number,
      at: instant,
      personId: id,
      byPersonId: id,
      kind: text,
      body: shape.anything,
      leadBody: shape.anything,
    })
  ),
  names,
  /** The trees of claims and flags that are named in it; the days of shifts; kind and season of rounds. */
  claims: shape.record(text, number),
  flags: shape.record(text, number),
  shifts: shape.record(text, dateOnly),
  rounds: shape.record(text, shape.tuple([shapes.roundKind, number])),
})
export type AuditTrail = shape.Out<typeof auditTrail>

/** Which events: null is no limit. */
export type AuditFilter = {
  before: number | null
  about: string | null
  tree: number | null
  kinds: readonly string[] | null
  day: string | null
}

type Read = <Value>(
  asked: { name: string; values: Record<string, unknown> },
  valueShape: shape.Shape<Value>
) => Promise<Outcome<Value>>

/** Null: there is none. Points as in `place_aerial`. */
const aerial = shape.nullable(
  shape.object({
    jpeg: text,
    points: shape.array(shape.tuple([number, number, number, number])),
    opacity: number,
  })
)
export type AerialRead = NonNullable<shape.Out<typeof aerial>>

export function readsOfRooms(read: Read) {
  const of = (orchardId: string, more: Record<string, unknown> = {}) => ({
    p_orchard: orchardId,
    ...more,
  })
  return {
    aerial: (orchardId: string) => read({ name: 'read_aerial', values: of(orchardId) }, aerial),
    treeHistory: (orchardId: string, tree: number) =>
      read({ name: 'tree_history', values: of(orchardId, { p_tree: tree }) }, treeHistory),
    volunteerHours: (orchardId: string, season: number | null) =>
      read(
        { name: 'volunteer_hours', values: of(orchardId, { p_season: season }) },
        volunteerHours
      ),
    workTimes: (orchardId: string) =>
      read({ name: 'work_times', values: of(orchardId) }, workTimes),
    myHours: (orchardId: string, personId: string) =>
      read({ name: 'my_hours', values: of(orchardId, { p_person: personId }) }, myHours),
    invites: (orchardId: string) => read({ name: 'read_invites', values: of(orchardId) }, invites),
    rounds: (orchardId: string) => read({ name: 'read_rounds', values: of(orchardId) }, rounds),
    shifts: (orchardId: string) => read({ name: 'read_shifts', values: of(orchardId) }, shifts),
    peopleWhoLeft: (orchardId: string) =>
      read({ name: 'people_who_left', values: of(orchardId) }, peopleWhoLeft),
    beforeForgetting: (orchardId: string, subject: string) =>
      read(
        { name: 'before_forgetting', values: of(orchardId, { p_subject: subject }) },
        beforeForgetting
      ),
    forecast: (orchardId: string) =>
      read({ name: 'read_forecast', values: of(orchardId) }, forecast),
    closeWatch: (orchardId: string) =>
      read({ name: 'close_watch', values: of(orchardId) }, closeWatch),
    exceptions: (orchardId: string) =>
      read({ name: 'read_exceptions', values: of(orchardId) }, exceptions),
    auditTrail: (orchardId: string, { before, about, tree, kinds, day }: AuditFilter) => {
      const values = { p_before: before, p_about: about, p_tree: tree, p_kinds: kinds, p_day: day }
      return read({ name: 'audit_trail', values: of(orchardId, values) }, auditTrail)
    },
  }
}
