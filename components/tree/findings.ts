/** What was found at the trees of who uses this device, as far as it still asks for something. */

import { claimOnTree, holderOf } from '@/lib/events/look-ups'
import type { ReopenReason } from '@/lib/events/state'
import { isLeadView, type View } from '@/lib/hooks'

export type Finding = {
  tree: number
  reason: ReopenReason
  byId: string
  /** Somebody else who has the tree, or to whom it is dealt. */
  withId: string | null
}

/** On a phone one reads a few, not a list. */
const mostReopened = 3
const mostPassed = 6

export function findingsFor(view: View): { reopened: Finding[]; passed: number[] } {
  const { state, me } = view
  if (!state || !me) return { reopened: [], passed: [] }
  const reopened: (Finding & { at: string })[] = []
  const passed: number[] = []
  for (const [no, found] of Object.entries(state.lookedOver)) {
    const tree = Number(no)
    // A lead hears of all trees; of their own only what is dealt back to them.
    if (isLeadView(view) && !state.deals[tree]?.includes(me.personId)) continue
    if (found.result === 'passed') passed.push(tree)
    else if (state.work[tree]?.state !== 'done') {
      const { reason, byId, at } = found
      reopened.push({ tree, reason, byId, at, withId: whoElse(view, tree, me.personId) })
    }
  }
  return {
    reopened: reopened
      .toSorted((a, b) => b.at.localeCompare(a.at))
      .slice(0, mostReopened)
      .map(({ at: _, ...finding }) => finding),
    passed: passed.slice(-mostPassed),
  }
}

function whoElse({ state }: View, tree: number, me: string): string | null {
  const claim = state && claimOnTree(state, tree)
  if (claim) return Object.hasOwn(claim.people, me) ? null : holderOf(claim)
  const dealt = state?.deals[tree]
  return dealt === undefined || dealt.includes(me) ? null : (dealt[0] ?? null)
}
