/** The shapes of what the backend says, checked at the door. */

import type { Answer } from '@/lib/events/answer'
import type { Event } from '@/lib/events/event'
import * as shapes from '@/lib/events/shapes'
import * as shape from '@/lib/util/shape'

export * from './came-in'

const { id, number, text, instant } = shapes

const next = shape.optional(
  shape.object({ tree: number, why: shape.oneOf(['dealt', 'same_row', 'nearest']) })
)
const refused = shape.object({
  refused: shape.array(
    shape.object({ code: text, detail: shape.optional(shape.record(text, shape.anything)) })
  ),
  next,
})
const accepted = shape.object({
  n: number,
  next,
  orchard: shape.optional(id),
  person: shape.optional(id),
  shift: shape.optional(id),
  tool: shape.optional(number),
  kept: shape.optional(shape.oneOf(['also_worked', 'late'])),
  missing: shape.optional(shape.array(text)),
})
export const answer = shape.union([refused, accepted]) satisfies shape.Shape<Answer>

const told = shape.object({
  n: number,
  at: instant,
  commandId: id,
  personId: id,
  byPersonId: id,
  kind: text,
  body: shape.anything,
  leadBody: shape.optional(shape.anything),
})
const event = shape.union([told, shape.object({ n: number })]) satisfies shape.Shape<Event>
export const events = shape.union([
  shape.object({ reset: shape.exactly(true) }),
  shape.object({ events: shape.array(event), head: number }),
])

/** As it is broadcast: PostgreSQL's spelling, and whether there is more to ask for. */
const heard = shape.object({
  n: number,
  at: instant,
  command_id: id,
  person_id: id,
  by_person_id: id,
  kind: text,
  body: shape.anything,
  more: shape.withDefault(shape.boolean, false),
  concerns: shape.optional(shape.array(id)),
})
export const live = shape.union([
  heard,
  shape.object({ n: number, more: shape.withDefault(shape.boolean, true) }),
])

export const heartbeat = shape.object({
  head: number,
  epoch: text,
  channelEpoch: number,
  minClient: number,
  now: instant,
})

export const memberships = shape.array(
  shape.object({
    orchard: id,
    name: text,
    language: shapes.language,
    person: id,
    personName: shapes.orNull(text),
    role: shapes.role,
    admitted: shape.boolean,
  })
)

export const invite = shape.nullable(
  shape.object({
    orchardName: text,
    language: shapes.language,
    kind: shape.oneOf(['join', 'role', 'device', 'recovery']),
    role: shapes.role,
    shiftDate: shapes.orNull(shapes.dateOnly),
    /** Why it lets nobody in any more. */
    over: shapes.orNull(shape.oneOf(['code_expired', 'code_used'])),
  })
)
export type Invite = NonNullable<shape.Out<typeof invite>>

export const names = shape.record(text, text)

/** `epoch`: after a restore the same version may say something else. */
export const emergencyCard = shape.object({
  version: number,
  epoch: id,
  card: shape.record(text, text),
})
export type EmergencyCard = shape.Out<typeof emergencyCard>

export const privatePeople = shape.record(
  text,
  shape.object({
    phone: shapes.orNull(text),
    heardAt: shapes.orNull(instant),
    heardHead: shapes.orNull(number),
    joinedBy: shapes.orNull(id),
    /** The last one of the open shift. */
    lastTree: shapes.orNull(number),
  })
)
export type PrivatePeople = shape.Out<typeof privatePeople>

export const toLookOver = shape.object({
  trees: shape.array(shape.object({ tree: number, at: instant, people: shape.array(id) })),
  people: shape.record(id, shape.object({ since: instant, lookedOver: number })),
})
export type ToLookOver = shape.Out<typeof toLookOver>

export const briefing = shape.nullable(
  shape.object({
    version: number,
    change: shapes.briefingChange,
    topics: shape.array(
      shape.object({ code: text, en: shapes.orNull(text), es: shapes.orNull(text) })
    ),
  })
)
export type Briefing = NonNullable<shape.Out<typeof briefing>>

export const photo = shape.object({ jpeg: text })

export const flagDetails = shape.record(
  id,
  shape.object({
    part: shapes.orNull(text),
    note: shapes.orNull(text),
    notes: shape.array(shape.object({ note: text, at: instant, personId: id })),
  })
)
export type FlagDetails = shape.Out<typeof flagDetails>

export const myFlags = shape.array(
  shape.object({
    flag: id,
    tree: number,
    kind: shapes.flagKind,
    sign: text,
    state: shape.oneOf(['suspected', 'confirmed', 'open', 'withdrawn', 'cleared']),
    raisedAt: instant,
    confirmedBy: shapes.orNull(id),
    endedAt: shapes.orNull(instant),
    endedBy: shapes.orNull(id),
    why: shapes.orNull(text),
    doneOn: shapes.orNull(shapes.dateOnly),
  })
)
export type MyFlag = shape.Out<typeof myFlags>[number]

export const notes = shape.array(
  shape.object({
    kind: shape.oneOf(['begun', 'flag', 'mark', 'left_out']),
    note: text,
    at: instant,
    personId: id,
  })
)
export type TreeNote = shape.Out<typeof notes>[number]

export const calls = shape.array(
  shape.extend(shapes.call, {
    call: id,
    calledBy: id,
    calledAt: instant,
    note: shapes.orNull(text),
    endedBy: shapes.orNull(id),
    endedAt: shapes.orNull(instant),
    outcome: shapes.orNull(text),
    hasIncident: shape.boolean,
  })
)
export type CallRead = shape.Out<typeof calls>[number]

export const incidents = shape.array(
  shape.object({
    incident: id,
    kind: shapes.incidentKind,
    tree: shapes.orNull(number),
    note: shapes.orNull(text),
    call: shapes.orNull(id),
    happenedAt: instant,
    writtenBy: id,
    writtenAt: instant,
  })
)
export type Incident = shape.Out<typeof incidents>[number]

/** [tree, the newest note on it]. */
export const notesOfRound = shape.array(shape.tuple([number, text]))
export type NotesOfRound = shape.Out<typeof notesOfRound>

const stopAnswered = shape.object({
  person: id,
  answer: shapes.stopAnswer,
  at: instant,
  byLead: shape.boolean,
})
export const shiftRecord = shape.nullable(
  shape.object({
    shift: id,
    date: shapes.dateOnly,
    state: shape.oneOf(['open', 'closed']),
    openedAt: instant,
    closedAt: shapes.orNull(instant),
    people: shape.array(
      shape.object({
        person: id,
        /** [arrived, left]: null for who is still here. */
        stays: shape.array(shape.tuple([instant, shape.nullable(instant)])),
        hereS: number,
        breakS: number,
        done: number,
        begun: number,
        helped: number,
        alsoWorked: number,
        fromPaper: number,
      })
    ),
    blocks: shape.array(shape.object({ block: number, done: number, begun: number })),
    stops: shape.array(
      shape.object({
        stop: id,
        block: shapes.orNull(number),
        calledBy: id,
        calledAt: instant,
        resumedAt: shapes.orNull(instant),
        answers: shape.array(stopAnswered),
      })
    ),
  })
)
export type ShiftRecord = NonNullable<shape.Out<typeof shiftRecord>>
