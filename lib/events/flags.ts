/** Flags for disease and for a licensed arborist, and their photos. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { claimOnTree, soiledAt } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { flag, id, number, orNull } from './shapes'

const raised = shape.extend(flag, { flag: id })
const withdrawn = shape.object({ flag: id })
/** With a mark it is seen by everybody; the rest of it is the leads'. */
const added = shape.object({
  photo: shape.optional(id),
  tree: orNull(number),
  mark: shape.optional(id),
})

export const flagFolds: Folds = {
  flag_raised: when(raised, (state, { flag, ...facts }, { personId, at }) => ({
    ...state,
    flags: withEntry(state.flags, flag, {
      ...facts,
      raisedBy: facts.raisedBy ?? personId,
      raisedAt: facts.raisedAt ?? at,
    }),
  })),
  flag_withdrawn: when(withdrawn, (state, { flag }) => ({
    ...state,
    flags: withoutKeys(state.flags, [flag]),
  })),
  photo_added: when(added, (state, { mark, tree, photo }) => {
    const known = state.marked[tree ?? 0]
    return known && photo && known.mark === mark
      ? { ...state, marked: withEntry(state.marked, tree ?? 0, { ...known, photo }) }
      : state
  }),
}

export const flagPredictions: Predictions = {
  flag_tree: (state, { id, personId, args }, now) => {
    const claim = args.kind === 'arborist' ? claimOnTree(state, args.tree) : null
    const begun = claim?.kind === 'prune' && args.share !== null
    const dealt = args.kind === 'arborist' && Object.hasOwn(state.deals, args.tree)
    return [
      {
        kind: 'flag_raised',
        body: {
          flag: id,
          tree: args.tree,
          kind: args.kind,
          state: args.kind === 'arborist' ? 'open' : 'suspected',
          sign: args.sign,
          severity: args.severity,
          keepOutM: args.kind === 'arborist' ? (args.keepOutM ?? keepOutOf(state)) : null,
          raisedBy: personId,
          raisedAt: now,
          ...(claim && {
            claimsEnded: [claim.id],
            ...soiledAt(state, args.tree, Object.keys(claim.people)),
          }),
          ...(begun && { work: [[args.tree, 'begun', args.share]] }),
          ...(dealt && { dealsEnded: [args.tree] }),
        },
      },
    ]
  },
  withdraw_flag: (state, { personId, args }, now) => {
    const flag = state.flags[args.flag]
    if (!flag) return 'asking'
    const minutes = (Date.parse(now) - Date.parse(flag.raisedAt)) / 60_000
    const limit = state.orchard.houseRules.withdraw_minutes ?? Number.POSITIVE_INFINITY
    return (
      refuse(flag.raisedBy !== personId && 'not_yours') ??
      refuse(minutes > limit && 'too_late_to_withdraw') ?? [
        { kind: 'flag_withdrawn', body: { flag: args.flag } },
      ]
    )
  },
  add_photo: (state, { id, args: { mark } }) => {
    const tree = Object.keys(state.marked).find((no) => state.marked[no]?.mark === mark)
    return mark === null || tree === undefined
      ? []
      : [{ kind: 'photo_added', body: { photo: id, tree: Number(tree), mark } }]
  },
}

function keepOutOf({
  orchard,
}: {
  orchard: { houseRules: Record<string, number> }
}): number | null {
  return orchard.houseRules.keep_out_m ?? null
}
