/** The snapshot as it comes, and the state that is in it. */

import * as shape from '@/lib/util/shape'

import * as shapes from './shapes'
import type { LookedOver, State, Work } from './state'

const { id, number, text } = shapes

const byTree = <Value extends shape.Shape>(value: Value) => shape.record(text, value)
const byId = <Value extends shape.Shape>(value: Value) => shape.record(id, value)

/** Here everything is said: nothing is taken from the event that carries it. */
const claim = shape.extend(shapes.claim, { openedAt: shapes.instant })
const flag = shape.extend(shapes.flag, { raisedBy: id, raisedAt: shapes.instant })
const call = shape.extend(shapes.call, { calledBy: id, calledAt: shapes.instant })
const stop = shape.extend(shapes.stop, { calledBy: id, calledAt: shapes.instant })

const snapshot = shape.object({
  orchardId: id,
  epoch: id,
  head: number,
  channelEpoch: number,
  sheetVersion: number,
  minClient: number,
  me: shape.object({ personId: id, role: shapes.role }),
  orchard: shapes.orchard,
  people: byId(shape.object({ role: shapes.role, admitted: shape.boolean })),
  rounds: byId(shapes.round),
  workRoundId: shape.nullable(id),
  shifts: byId(shapes.shift),
  attendance: byId(shapes.attendance),
  briefed: byId(shape.object({ givenVersion: number, signedVersion: number })),
  equipped: byId(shape.boolean),
  tools: byTree(shapes.tool),
  /** `done`, and `passed` and `hauled` below: runs, [first, last, first, last, …]. */
  work: shape.object({
    done: shape.array(number),
    begun: shape.array(shape.tuple([number, shape.nullable(number)])),
    leftOut: shape.array(number),
  }),
  lookedOver: shape.object({
    passed: shape.array(number),
    reopened: shape.array(shape.tuple([number, shapes.reopenReason, id, shapes.instant])),
  }),
  hauled: shape.array(number),
  brushGoes: shape.record(text, shapes.brushGoes),
  claims: byId(claim),
  deals: byTree(shape.array(id)),
  dealtBy: byTree(id),
  marked: byTree(shape.object({ mark: id, by: id, photo: shape.nullable(id) })),
  flags: byId(flag),
  stops: byId(stop),
  calls: byId(call),
  skills: byId(shape.record(shapes.skill, shape.nullable(shapes.dateOnly))),
  consents: byId(number),
  minors: byId(shape.object({ guardianId: shape.nullable(id) })),
  notFound: shape.withDefault(byId(id), {}),
  failedEquipment: byId(shape.array(text)),
  weather: shapes.weather,
  forecast: shapes.orNull(id),
  exceptions: shape.record(text, shapes.exception),
  toLeave: byId(shapes.leaving),
})

/** Null: not a snapshot. */
export function stateOf(told: unknown): State | null {
  const known = shape.read(snapshot, told)
  if (!known) return null
  const { work, lookedOver, hauled, ...rest } = known.value
  return {
    ...rest,
    work: unpacked(work),
    lookedOver: unpackedFindings(lookedOver),
    hauled: Object.fromEntries([...inRuns(hauled)].map((tree) => [tree, true as const])),
  }
}

function unpacked(packed: shape.Out<typeof snapshot>['work']): Record<string, Work> {
  const work: Record<string, Work> = {}
  for (const tree of inRuns(packed.done)) work[tree] = { state: 'done', share: null }
  for (const [tree, share] of packed.begun) work[tree] = { state: 'begun', share }
  for (const tree of packed.leftOut) work[tree] = { state: 'left_out', share: null }
  return work
}

function unpackedFindings(
  packed: shape.Out<typeof snapshot>['lookedOver']
): Record<string, LookedOver> {
  const findings: Record<string, LookedOver> = {}
  for (const tree of inRuns(packed.passed)) findings[tree] = { result: 'passed' }
  for (const [tree, reason, byId, at] of packed.reopened) {
    findings[tree] = { result: 'reopened', reason, byId, at }
  }
  return findings
}

function* inRuns(runs: readonly number[]): Generator<number> {
  for (let at = 0; at + 1 < runs.length; at += 2) {
    const [first, last] = [runs[at] ?? 0, runs[at + 1] ?? -1]
    for (let tree = first; tree <= last; tree++) yield tree
  }
}
