/** Which trees I can take from here, the best first. */

import type { NextTree } from '@/lib/domain/planning/next-tree'
import { myDealtTrees, nextTreeFor, refusalsFor, type View } from '@/lib/hooks'

export type Suggestion = {
  tree: number
  why: 'dealt' | 'same_row' | 'nearest' | 'chosen'
  walkM: number | null
}

export type Suggested =
  | { state: 'found'; suggestion: Suggestion }
  | { state: 'nothing_left'; refusedTrees: ReadonlyMap<string, number> }

/** Who works with me is asked when I claim it, so that alone keeps no dealt tree from me. */
const askedOnClaiming = ['two_people_needed']

/** `left` is the tree I have just let go without finishing it: any other one goes before. */
export function suggestedTree(view: View, from: number | null, left: number | null): Suggested {
  if (left === null) return bestTree(view, from)
  const another = bestTree(without(view, left), from)
  return another.state === 'found' ? another : bestTree(view, from)
}

function bestTree(view: View, from: number | null): Suggested {
  const next = nextTreeFor(view, from)
  if (next.state === 'found' && next.why === 'dealt') return found(next)
  const dealt = myDealtTrees(view).find((tree) =>
    refusalsFor(view, tree).every(({ code }) => askedOnClaiming.includes(code))
  )
  if (dealt !== undefined)
    return { state: 'found', suggestion: { tree: dealt, why: 'dealt', walkM: null } }
  return next.state === 'found' ? found(next) : next
}

/** Others to choose from instead of one. */
export function otherTrees(
  view: View,
  from: number | null,
  { not, count }: { not: number | null; count: number }
): Suggestion[] {
  const suggestions: Suggestion[] = []
  let rest = not === null ? view : without(view, not)
  while (suggestions.length < count) {
    const next = nextTreeFor(rest, from)
    if (next.state !== 'found') break
    suggestions.push({ tree: next.tree.no, why: next.why, walkM: next.walkM })
    rest = without(rest, next.tree.no)
  }
  return suggestions
}

/** As if this tree were done. */
function without(view: View, tree: number): View {
  const { state } = view
  if (!state) return view
  const done = { state: 'done', share: null } as const
  return { ...view, state: { ...state, work: { ...state.work, [tree]: done } } }
}

function found(next: Extract<NextTree<string>, { state: 'found' }>): Suggested {
  return {
    state: 'found',
    suggestion: { tree: next.tree.no, why: next.why, walkM: next.walkM },
  }
}
