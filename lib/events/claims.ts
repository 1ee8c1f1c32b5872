/** Who holds which tree, and what becomes of it. */

import * as shape from '@/lib/util/shape'

import { type Folds, onlyChanges, type Prediction, type Predictions, refuse, when } from './family'
import { claimOnTree, hasFlag, pruned, soiledAt } from './look-ups'
import { withChanged, withEntry, withoutKeys } from './record'
import { claim, id, part } from './shapes'
import type { Claim, State, WorkState } from './state'

const claimed = shape.extend(claim, { claim: id })
const joined = shape.object({ claim: id, person: id, part })
const handedOver = shape.object({ claim: id, to: id, from: id })

/** A claim as the referee spells it. */
export const fromClaim = when(claimed, (state, { claim, openedAt, ...facts }, { at }) => ({
  ...state,
  claims: withEntry(state.claims, claim, { ...facts, openedAt: openedAt ?? at }),
}))

export const claimFolds: Folds = {
  tree_claimed: fromClaim,
  tree_undone: fromClaim,
  tree_joined: when(joined, (state, { claim, person, part }) =>
    withPeople(state, claim, (people) => withEntry(people, person, part))
  ),
  tree_handed_over: when(handedOver, (state, { claim, to, from }) =>
    withPeople(state, claim, (people) => withEntry(withoutKeys(people, [from]), to, 'holder'))
  ),
  tree_left: onlyChanges,
  tree_released: onlyChanges,
  tree_finished: onlyChanges,
  also_worked: onlyChanges,
  tree_finished_late: onlyChanges,
  tree_released_late: onlyChanges,
  claim_ended: onlyChanges,
}

function withPeople(
  state: State,
  claimId: string,
  change: (people: Claim['people']) => Claim['people']
): State {
  return {
    ...state,
    claims: withChanged(state.claims, claimId, (known) => ({
      ...known,
      people: change(known.people),
    })),
  }
}

export const claimPredictions: Predictions = {
  leave_tree: (state, { personId, args }) => {
    const claim = state.claims[args.claim]
    const part = claim?.people[personId]
    if (!claim) return 'asking'
    return (
      refuse(!part && 'not_in_claim', part === 'holder' && 'holder_hands_over') ?? [
        {
          kind: 'tree_left',
          body: {
            claimsLeft: [[args.claim, personId]],
            ...soiledAt(state, claim.tree, [personId]),
          },
        },
      ]
    )
  },
  finish_tree: (state, { personId, args }) =>
    worked(state, personId, args, { kind: 'tree_finished', state: 'done', share: null }),
  release_tree: (state, { personId, args }) =>
    worked(state, personId, args, {
      kind: 'tree_released',
      state: args.share === null ? null : 'begun',
      share: args.share,
    }),
}

type Result = { kind: string; state: WorkState | null; share: number | null }

/** What came too late is kept, but only the referee knows as what. */
function worked(
  state: State,
  personId: string,
  { claim: claimId, tree }: { claim: string | null; tree: number },
  result: Result
): Prediction {
  const claim = claimId === null ? undefined : state.claims[claimId]
  const part = claim?.people[personId]
  const stillMine = claim?.tree === tree && (part === 'holder' || part === 'helper')
  const begunOffline = claimId === null && isFreeFor(state, personId, tree)
  if (!stillMine && !begunOffline) return 'asking'

  // Brush and other work leave a tree as pruned as it was.
  const prunes = claim === undefined || claim.kind === 'prune'
  const people = claim ? Object.keys(claim.people) : [personId]
  return [
    {
      kind: result.kind,
      body: {
        tree,
        ...(claimId !== null && { claimsEnded: [claimId] }),
        ...(begunOffline && { dealsEnded: [tree] }),
        ...(prunes && result.state && { work: [[tree, result.state, result.share]] }),
        ...(claim?.kind === 'brush' &&
          result.state === 'done' && { hauled: pruned(state, [tree]) }),
        ...soiledAt(state, tree, people),
      },
    },
  ]
}

/** Dealt to this person who is on the shift, and nobody has taken, done or flagged it meanwhile. */
function isFreeFor(state: State, personId: string, tree: number): boolean {
  const work = state.work[tree]?.state
  return (
    Object.hasOwn(state.attendance, personId) &&
    state.deals[tree]?.includes(personId) === true &&
    claimOnTree(state, tree) === null &&
    work !== 'done' &&
    work !== 'left_out' &&
    !hasFlag(state, tree, 'arborist')
  )
}
