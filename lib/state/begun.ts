/** A tree dealt to me that I begin without signal: mine as far as this device knows, "not confirmed". */

import type { ArgsOf, Command } from '@/lib/events/commands'
import { claimOf, claimOnTree } from '@/lib/events/look-ups'
import type { Instant, State } from '@/lib/events/state'

import type { Begun } from './view'

export type BeginResult = 'begun' | 'not_dealt' | 'holds_another'

export function canBegin(
  state: State | null,
  begun: Begun | null,
  personId: string,
  tree: number
): BeginResult {
  if (!state?.deals[tree]?.includes(personId) || claimOnTree(state, tree)) return 'not_dealt'
  return begun || claimOf(state, personId) ? 'holds_another' : 'begun'
}

/** The claim came after all. */
export function isClaimed(state: State, { tree }: Begun, personId: string): boolean {
  const claim = claimOnTree(state, tree)
  return claim !== null && Object.hasOwn(claim.people, personId)
}

export function endsBegun(command: Command, begun: Begun | null): boolean {
  const ends =
    command.name === 'finish_tree' ||
    command.name === 'release_tree' ||
    (command.name === 'flag_tree' && command.args.kind === 'arborist')
  return ends && command.args.tree === begun?.tree
}

/** What to say about a tree one worked on: its claim, or since when without one. */
export function workArgsOf(
  { state, begun }: { state: State | null; begun: Begun | null },
  personId: string,
  tree: number,
  at: Instant
): Required<ArgsOf<'finish_tree'>> {
  const claim = state && claimOnTree(state, tree)
  const isMine = claim !== null && Object.hasOwn(claim.people, personId)
  const begunAt = !isMine && begun?.tree === tree ? begun.at : null
  const since = isMine ? claim.openedAt : begunAt
  return {
    claim: isMine ? claim.id : null,
    tree,
    begunAt,
    at,
    elapsedS: since === null ? null : secondsBetween(since, at),
  }
}

function secondsBetween(from: Instant, to: Instant): number {
  return Math.max(0, Math.round((Date.parse(to) - Date.parse(from)) / 1000))
}
