/** The shapes of what the backend says, checked at the door. */

import * as z from 'zod/mini'

import type { Answer } from '@/lib/events/answer'
import type { Event } from '@/lib/events/event'
import * as shapes from '@/lib/events/shapes'

const { id, number, text, instant } = shapes

const next = z.optional(z.object({ tree: number, why: z.enum(['dealt', 'same_row', 'nearest']) }))
const refused = z.object({
  refused: z.array(z.object({ code: text, detail: z.optional(z.record(text, z.unknown())) })),
  next,
})
const accepted = z.object({
  n: number,
  next,
  orchard: z.optional(id),
  person: z.optional(id),
  shift: z.optional(id),
  tool: z.optional(number),
  kept: z.optional(z.enum(['also_worked', 'late'])),
})
export const answer = z.union([refused, accepted]) satisfies z.ZodMiniType<Answer>

const told = z.object({
  n: number,
  at: instant,
  commandId: id,
  personId: id,
  byPersonId: id,
  kind: text,
  body: z.unknown(),
  leadBody: z.optional(z.unknown()),
})
const event = z.union([told, z.object({ n: number })]) satisfies z.ZodMiniType<Event>
export const events = z.union([
  z.object({ reset: z.literal(true) }),
  z.object({ events: z.array(event), head: number }),
])

/** As it is broadcast: PostgreSQL's spelling, and whether there is more to ask for. */
const heard = z.object({
  n: number,
  at: instant,
  command_id: id,
  person_id: id,
  by_person_id: id,
  kind: text,
  body: z.unknown(),
  more: z._default(z.boolean(), false),
})
export const live = z.union([heard, z.object({ n: number, more: z._default(z.boolean(), true) })])

export const heartbeat = z.object({
  head: number,
  epoch: text,
  channelEpoch: number,
  minClient: number,
  now: instant,
})

export const memberships = z.array(
  z.object({
    orchard: id,
    name: text,
    language: shapes.language,
    person: id,
    personName: shapes.orNull(text),
    role: shapes.role,
    admitted: z.boolean(),
  })
)

export const invite = z.nullable(
  z.object({
    orchardName: text,
    language: shapes.language,
    kind: z.enum(['join', 'role', 'device', 'recovery']),
    role: shapes.role,
    shiftDate: shapes.orNull(shapes.dateOnly),
  })
)
export type Invite = NonNullable<z.infer<typeof invite>>

export const names = z.record(text, text)

export const privatePeople = z.record(
  text,
  z.object({
    phone: shapes.orNull(text),
    heardAt: shapes.orNull(instant),
    heardHead: shapes.orNull(number),
    joinedBy: shapes.orNull(id),
  })
)
export type PrivatePeople = z.infer<typeof privatePeople>

export const briefing = z.nullable(
  z.object({
    version: number,
    change: shapes.briefingChange,
    topics: z.array(z.object({ code: text, en: shapes.orNull(text), es: shapes.orNull(text) })),
  })
)
export type Briefing = NonNullable<z.infer<typeof briefing>>

export const photo = z.object({ jpeg: text })

export const notes = z.array(
  z.object({
    kind: z.enum(['begun', 'flag', 'mark']),
    note: text,
    at: instant,
    personId: id,
  })
)
export type TreeNote = z.infer<typeof notes>[number]
