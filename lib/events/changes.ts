/** The changes that any event may carry, always spelled the same, so that folding needs no rule of the trade. */

import * as shape from '@/lib/util/shape'

import { withChanged, withoutKeys } from './record'
import { id, number } from './shapes'
import type { Claim, State, Tool, Work } from './state'

export const changes = shape.object({
  work: shape.optional(
    shape.array(
      shape.tuple([
        number,
        shape.oneOf(['unpruned', 'begun', 'done', 'left_out']),
        shape.nullable(number),
      ])
    )
  ),
  claimsEnded: shape.optional(shape.array(id)),
  claimsLeft: shape.optional(shape.array(shape.tuple([id, id]))),
  dealsEnded: shape.optional(shape.array(number)),
  hauled: shape.optional(shape.array(number)),
  lying: shape.optional(shape.array(number)),
  dirty: shape.optional(shape.array(number)),
  returned: shape.optional(shape.array(number)),
  left: shape.optional(shape.array(id)),
  callsEnded: shape.optional(shape.array(id)),
  channel: shape.optional(number),
  sheet: shape.optional(number),
})
export type Changes = shape.Out<typeof changes>

export function foldChanges(state: State, change: Changes): State {
  const { work, claimsEnded = [], claimsLeft, dealsEnded = [], dirty, returned, left = [] } = change
  const { callsEnded = [] } = change
  return {
    ...state,
    work: work ? worked(state.work, work) : state.work,
    claims: withoutKeys(claimsLeft ? without(state.claims, claimsLeft) : state.claims, claimsEnded),
    hauled: hauledAfter(state.hauled, change),
    deals: withoutKeys(state.deals, dealsEnded),
    dealtBy: withoutKeys(state.dealtBy, dealsEnded),
    tools: toolsAfter(state.tools, dirty, returned),
    attendance: withoutKeys(state.attendance, left),
    calls: withoutKeys(state.calls, callsEnded),
    channelEpoch: change.channel ?? state.channelEpoch,
    sheetVersion: change.sheet ?? state.sheetVersion,
  }
}

function worked(before: State['work'], changed: NonNullable<Changes['work']>): State['work'] {
  const work: Record<string, Work> = { ...before }
  for (const [tree, state, share] of changed) {
    if (state === 'unpruned') delete work[tree]
    else work[tree] = { state, share }
  }
  return work
}

/** Whatever changes a tree's work leaves new wood there, or none to speak of. */
function hauledAfter(
  before: State['hauled'],
  { work = [], lying = [], hauled = [] }: Changes
): State['hauled'] {
  const rest = withoutKeys(before, [...work.map(([tree]) => tree), ...lying])
  if (hauled.length === 0) return rest
  return { ...rest, ...Object.fromEntries(hauled.map((tree) => [tree, true as const])) }
}

function without(
  before: State['claims'],
  claimsLeft: NonNullable<Changes['claimsLeft']>
): State['claims'] {
  return claimsLeft.reduce(
    (claims, [claimId, personId]) =>
      withChanged(claims, claimId, (claim: Claim) => ({
        ...claim,
        people: withoutKeys(claim.people, [personId]),
      })),
    before
  )
}

function toolsAfter(
  before: State['tools'],
  dirty: readonly number[] = [],
  returned: readonly number[] = []
): State['tools'] {
  const soiled = dirty.reduce(
    (tools, no) => withChanged(tools, no, (tool: Tool) => ({ ...tool, clean: false })),
    before
  )
  return returned.reduce(
    (tools, no) => withChanged(tools, no, (tool: Tool) => ({ ...tool, heldBy: null })),
    soiled
  )
}
