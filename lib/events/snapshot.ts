/** The snapshot as it comes, and the state that is in it. */

import * as z from 'zod/mini'

import * as shapes from './shapes'
import type { State, Work } from './state'

const { id, number, text } = shapes

const byTree = <Value extends z.core.$ZodType>(value: Value) => z.record(text, value)
const byId = <Value extends z.core.$ZodType>(value: Value) => z.record(id, value)

/** Here everything is said: nothing is taken from the event that carries it. */
const claim = z.extend(shapes.claim, { openedAt: shapes.instant })
const flag = z.extend(shapes.flag, { raisedBy: id, raisedAt: shapes.instant })
const stop = z.extend(shapes.stop, { calledBy: id, calledAt: shapes.instant })

const snapshot = z.object({
  orchardId: id,
  epoch: id,
  head: number,
  channelEpoch: number,
  sheetVersion: number,
  minClient: number,
  me: z.object({ personId: id, role: shapes.role }),
  orchard: shapes.orchard,
  people: byId(z.object({ role: shapes.role, admitted: z.boolean() })),
  rounds: byId(shapes.round),
  workRoundId: z.nullable(id),
  shifts: byId(shapes.shift),
  attendance: byId(z.object({ state: z.enum(['here', 'break']), since: shapes.instant })),
  briefed: byId(z.object({ given: z.boolean(), signedVersion: number })),
  equipped: byId(z.boolean()),
  tools: byTree(shapes.tool),
  /** `done`: runs, [first, last, first, last, …]. */
  work: z.object({
    done: z.array(number),
    begun: z.array(z.tuple([number, z.nullable(number)])),
    leftOut: z.array(number),
  }),
  claims: byId(claim),
  deals: byTree(z.array(id)),
  marked: byTree(z.literal(true)),
  flags: byId(flag),
  stops: byId(stop),
  skills: byId(z.partialRecord(shapes.skill, z.nullable(shapes.dateOnly))),
  consents: byId(number),
  minors: byId(z.object({ guardianId: z.nullable(id) })),
  failedEquipment: byId(z.array(text)),
})

/** Null: not a snapshot. */
export function stateOf(told: unknown): State | null {
  const parsed = z.safeParse(snapshot, told)
  if (!parsed.success) return null
  const { work, ...rest } = parsed.data
  return { ...rest, work: unpacked(work) }
}

function unpacked(packed: z.infer<typeof snapshot>['work']): Record<string, Work> {
  const work: Record<string, Work> = {}
  for (let at = 0; at + 1 < packed.done.length; at += 2) {
    const [first, last] = [packed.done[at] ?? 0, packed.done[at + 1] ?? -1]
    for (let tree = first; tree <= last; tree++) work[tree] = { state: 'done', share: null }
  }
  for (const [tree, share] of packed.begun) work[tree] = { state: 'begun', share }
  for (const tree of packed.leftOut) work[tree] = { state: 'left_out', share: null }
  return work
}
