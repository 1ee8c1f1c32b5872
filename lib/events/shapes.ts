/** The shapes that snapshot and events share. What the referee leaves out is null here. */

import * as z from 'zod/mini'

/** Ids are checked, so that no id can be a word that every object knows. */
export const id = z
  .string()
  .check(z.regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/))
export const number = z.int()
export const text = z.string()
export const instant = z.string()
export const dateOnly = z.string()

export function orNull<Schema extends z.core.$ZodType>(schema: Schema) {
  return z.prefault(z.nullable(schema), null)
}

export const role = z.enum(['manager', 'lead', 'volunteer', 'visitor'])
export const skill = z.enum(['hand_saw', 'ladder', 'prunes_alone'])
export const toolKind = z.enum(['pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other'])
export const part = z.enum(['holder', 'helper', 'learner'])
export const severity = z.enum(['low', 'high', 'danger_now'])
export const offReason = z.enum(['season', 'rain', 'wet_wood', 'wind', 'thunder', 'heat', 'lead'])
export const language = z.enum(['en', 'es'])
export const units = z.enum(['metric', 'us'])
export const briefingChange = z.enum(['first', 'before_next_tree', 'come_down'])
export const claimKind = z.enum(['prune', 'brush', 'other'])
export const purpose = z.enum(['work', 'teaching'])
export const flagKind = z.enum(['disease', 'arborist'])
export const signal = z.enum(['horn', 'whistle', 'voice'])
export const roundKind = z.enum(['winter', 'summer', 'after_harvest', 'training'])
export const stopAnswer = z.enum(['stopped', 'resumed'])

export const orchard = z.object({
  name: text,
  timeZone: text,
  language,
  units,
  houseRules: z.record(text, z.number()),
  emergency: z.record(text, text),
})

export const round = z.object({
  kind: roundKind,
  season: number,
  species: z.array(text),
  from: dateOnly,
  to: dateOnly,
})

export const shift = z.object({
  roundId: id,
  date: dateOnly,
  startsAt: instant,
  endsAt: instant,
  state: z._default(z.enum(['scheduled', 'open']), 'scheduled'),
  signal,
  briefingVersion: z._default(number, 0),
  briefingChange: orNull(briefingChange),
  off: z._default(z.record(text, offReason), {}),
})

export const tool = z.object({
  label: text,
  kind: toolKind,
  fit: z._default(z.boolean(), true),
  clean: z._default(z.boolean(), true),
  heldBy: orNull(id),
  ownedBy: orNull(id),
})

export const claim = z.object({
  tree: orNull(number),
  row: orNull(z.object({ block: number, row: number })),
  purpose,
  kind: claimKind,
  ladder: z.boolean(),
  buddyId: orNull(id),
  openedAt: z.optional(instant),
  people: z.record(id, part),
})

export const flag = z.object({
  tree: number,
  kind: flagKind,
  state: z.enum(['suspected', 'confirmed', 'open']),
  sign: text,
  severity,
  keepOutM: orNull(z.number()),
  raisedBy: z.optional(id),
  raisedAt: z.optional(instant),
})

export const stop = z.object({
  block: orNull(number),
  calledBy: z.optional(id),
  calledAt: z.optional(instant),
  resumed: z._default(z.boolean(), false),
  answers: z._default(z.record(id, stopAnswer), {}),
})
