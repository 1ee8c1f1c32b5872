/** What a lead says of somebody else's work: no device was there, so the time is when it is tapped. */

import type { ArgsOf } from '@/lib/events/commands'
import type { OpenClaim } from './claims'

export type WorkArgs = Required<ArgsOf<'finish_tree'>>

export function workArgsFor({ id, openedAt }: OpenClaim, tree: number, now: Date | null): WorkArgs {
  const seconds = now ? Math.round((now.getTime() - Date.parse(openedAt)) / 1000) : null
  return {
    claim: id,
    tree,
    begunAt: openedAt,
    at: now?.toISOString() ?? null,
    elapsedS: seconds === null ? null : Math.max(0, seconds),
  }
}
