/** The shapes that snapshot and events share. What the referee leaves out is null here. */

import * as shape from '@/lib/util/shape'

/** Ids are checked, so that no id can be a word that every object knows. */
export const id = shape.matching(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/)
export const number = shape.integer
export const text = shape.text
export const instant = shape.text
export const dateOnly = shape.text

export function orNull<Some extends shape.Shape>(some: Some) {
  return shape.withDefault(shape.nullable(some), null)
}

export const role = shape.oneOf(['manager', 'lead', 'volunteer', 'visitor'])
export const skill = shape.oneOf(['hand_saw', 'ladder', 'prunes_alone'])
export const toolKind = shape.oneOf(['pruner', 'lopper', 'saw', 'pole_pruner', 'ladder', 'other'])
export const part = shape.oneOf(['holder', 'helper', 'learner'])
export const severity = shape.oneOf(['low', 'high', 'danger_now'])
export const offReason = shape.oneOf([
  'season',
  'rain',
  'wet_wood',
  'wind',
  'thunder',
  'heat',
  'lead',
])
export const leaveWhy = shape.oneOf([
  'thunder',
  'too_windy',
  'too_hot',
  'dark',
  'ladders_off',
  'species_off',
])
/** Why a lead lets a species be pruned although it is off. */
export const exceptionBecause = [
  'bark_is_dry',
  'dead_wood_only',
  'wounds_covered',
  'young_tree',
  'must_come_off',
  'lead_judges',
] as const
/** Why a lead lets work go on though the sun is down. Ladders stay off, but where it is day all the same. */
export const darkBecause = ['lamps', 'day_here', 'lead_judges'] as const
export const reopenReason = shape.oneOf([
  'stubs_left',
  'centre_closed',
  'crossing_left',
  'dead_left',
  'too_much_shortened',
  'torn_bark',
  'wood_hanging',
  'not_tidy',
])
export const brushGoes = shape.oneOf(['burn', 'chip', 'bag', 'pile'])
export const language = shape.oneOf(['en', 'es'])
export const units = shape.oneOf(['metric', 'us'])
export const briefingChange = shape.oneOf(['first', 'before_next_tree', 'come_down'])
export const claimKind = shape.oneOf(['prune', 'brush', 'other'])
export const purpose = shape.oneOf(['work', 'teaching'])
export const flagKind = shape.oneOf(['disease', 'arborist'])
export const signal = shape.oneOf(['horn', 'whistle', 'voice'])
export const roundKind = shape.oneOf(['winter', 'summer', 'after_harvest', 'training'])
export const callKind = shape.oneOf(['question', 'tool', 'injury', 'lost_person'])
/** Common practice, no source: what leads tell the manager of at the end of a day. */
export const incidentKinds = [
  'injury',
  'near_miss',
  'tool',
  'ladder',
  'power_line',
  'lost_person',
  'damage',
  'other',
] as const
export const incidentKind = shape.oneOf(incidentKinds)
export const stopAnswer = shape.oneOf(['stopped', 'resumed'])

export const orchard = shape.object({
  name: text,
  timeZone: text,
  language,
  units,
  houseRules: shape.record(text, shape.number),
  emergencyVersion: number,
  aerialVersion: number,
})

export const round = shape.object({
  kind: roundKind,
  season: number,
  species: shape.array(text),
  from: dateOnly,
  to: dateOnly,
})

export const shift = shape.object({
  roundId: id,
  date: dateOnly,
  startsAt: instant,
  endsAt: instant,
  state: shape.withDefault(shape.oneOf(['scheduled', 'open']), 'scheduled'),
  signal,
  briefingVersion: shape.withDefault(number, 0),
  briefingChange: orNull(briefingChange),
  comeDownVersion: shape.withDefault(number, 0),
  off: shape.withDefault(shape.record(text, offReason), {}),
})

export const tool = shape.object({
  label: text,
  kind: toolKind,
  fit: shape.withDefault(shape.boolean, true),
  clean: shape.withDefault(shape.boolean, true),
  heldBy: orNull(id),
  ownedBy: orNull(id),
})

export const claim = shape.object({
  tree: orNull(number),
  row: orNull(shape.object({ block: number, row: number })),
  purpose,
  kind: claimKind,
  ladder: shape.boolean,
  buddyId: orNull(id),
  openedAt: shape.optional(instant),
  people: shape.record(id, part),
})

export const inside = shape.record(id, shape.object({ tree: orNull(number), out: shape.boolean }))

const referReason = shape.object({
  code: text,
  seen: shape.boolean,
  value: orNull(shape.number),
  limit: orNull(shape.number),
})
/** Null: nobody was asked. Empty: the rules found nothing. */
export const referReasons = orNull(shape.array(referReason))
export const limb = orNull(
  shape.object({ cm: orNull(shape.number), bearingDeg: orNull(shape.number) })
)

export const flag = shape.object({
  tree: number,
  kind: flagKind,
  state: shape.oneOf(['suspected', 'confirmed', 'open']),
  sign: text,
  severity,
  keepOutM: orNull(shape.number),
  reasons: referReasons,
  limb,
  raisedBy: shape.optional(id),
  raisedAt: shape.optional(instant),
  inside: shape.withDefault(inside, {}),
  photos: shape.withDefault(shape.array(id), []),
  notes: shape.withDefault(number, 0),
})

export const stop = shape.object({
  block: orNull(number),
  calledBy: shape.optional(id),
  calledAt: shape.optional(instant),
  resumed: shape.withDefault(shape.boolean, false),
  answers: shape.withDefault(shape.record(id, stopAnswer), {}),
  seenBy: shape.withDefault(shape.record(id, id), {}),
})

export const call = shape.object({
  kind: callKind,
  tree: orNull(number),
  subject: orNull(id),
  calledBy: shape.optional(id),
  calledAt: shape.optional(instant),
  answeredBy: orNull(id),
  answeredAt: orNull(instant),
})

export const measured = {
  temperatureC: orNull(shape.number),
  humidity: orNull(shape.number),
  windKmh: orNull(shape.number),
  gustKmh: orNull(shape.number),
  canopy: orNull(shape.oneOf(['wet', 'dry'])),
  thunder: shape.withDefault(shape.boolean, false),
  rainInH: orNull(number),
}

export const reading = shape.object({ ...measured, measuredAt: instant })

export const weather = shape.object({
  latest: orNull(reading),
  thunderAt: orNull(instant),
  wetAt: orNull(instant),
})

export const attendance = shape.object({
  state: shape.oneOf(['here', 'break']),
  since: instant,
  restedAt: shape.optional(instant),
})

export const exception = shape.object({
  lifts: shape.array(text),
  because: text,
  madeBy: id,
  madeAt: instant,
})

export const leaving = shape.object({
  claim: id,
  tree: orNull(number),
  why: leaveWhy,
  toldAt: instant,
})
