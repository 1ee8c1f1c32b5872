/** Flags for disease and for a licensed arborist, and their photos. */

import * as shape from '@/lib/util/shape'

import { type Folds, type Predictions, refuse, when } from './family'
import { closedOff, withFlag } from './keep-outs'
import { isLead } from './look-ups'
import { withEntry, withoutKeys } from './record'
import { flag, id, number, orNull, severity, text } from './shapes'
import type { Flag, Instant, State } from './state'

const raised = shape.extend(flag, { flag: id })
const over = shape.object({ flag: id })
const confirmed = shape.object({
  flag: id,
  sign: text,
  severity,
  notes: shape.optional(number),
})
const followedUp = shape.object({ flag: id, notes: number })
/** With a mark it is seen by everybody; the rest of it is the leads'. */
const added = shape.object({
  photo: shape.optional(id),
  tree: orNull(number),
  mark: shape.optional(id),
  flag: shape.optional(id),
})

const fromOpen = when(over, (state, { flag }) => ({
  ...state,
  flags: withoutKeys(state.flags, [flag]),
}))

export const flagFolds: Folds = {
  flag_raised: when(raised, (state, { flag, ...facts }, { personId, at }) => ({
    ...state,
    flags: withEntry(state.flags, flag, {
      ...facts,
      raisedBy: facts.raisedBy ?? personId,
      raisedAt: facts.raisedAt ?? at,
    }),
  })),
  flag_withdrawn: fromOpen,
  flag_cleared: fromOpen,
  flag_confirmed: when(confirmed, (state, { flag, sign, severity, notes }) =>
    withFlag(state, flag, (known) => ({
      ...known,
      state: 'confirmed',
      sign,
      severity,
      notes: notes ?? known.notes,
    }))
  ),
  flag_followed_up: when(followedUp, (state, { flag, notes }) =>
    withFlag(state, flag, (known) => ({ ...known, notes }))
  ),
  photo_added: when(added, (state, { mark, tree, photo, flag }) => {
    const known = state.marked[tree ?? 0]
    const marked = known && photo && known.mark === mark && { ...known, photo }
    const shown = marked ? { ...state, marked: withEntry(state.marked, tree ?? 0, marked) } : state
    return photo && flag
      ? withFlag(shown, flag, (flagged) => ({ ...flagged, photos: [...flagged.photos, photo] }))
      : shown
  }),
}

export const flagPredictions: Predictions = {
  flag_tree: (state, { id, personId, args }, now, ground) => {
    const { tree, kind, sign, severity, share, reasons, limb } = args
    const isHazard = kind === 'arborist'
    const keepOutM = isHazard ? (args.keepOutM ?? keepOutOf(state)) : null
    const dealt = isHazard && Object.hasOwn(state.deals, tree)
    return [
      {
        kind: 'flag_raised',
        body: {
          flag: id,
          tree,
          kind,
          state: isHazard ? 'open' : 'suspected',
          sign,
          severity,
          keepOutM,
          reasons,
          limb,
          raisedBy: personId,
          raisedAt: now,
          ...(isHazard && closedOff(state, ground, { tree, keepOutM }, { personId, share })),
          ...(dealt && { dealsEnded: [tree] }),
        },
      },
    ]
  },
  withdraw_flag: (state, { personId, args }, now) => {
    const flag = state.flags[args.flag]
    if (!flag) return 'asking'
    const reasons = isLead(state)
      ? [flag.kind === 'arborist' && !isInTime(state, flag, personId, now) && 'only_manager_clears']
      : [
          flag.raisedBy !== personId && 'not_yours',
          flag.raisedBy === personId &&
            !isInTime(state, flag, personId, now) &&
            'too_late_to_withdraw',
        ]
    const refused = refuse(...reasons)
    // This login may also be a lead's.
    if (refused && personId !== state.me.personId) return 'asking'
    return refused ?? [{ kind: 'flag_withdrawn', body: { flag: args.flag } }]
  },
  confirm_flag: (state, { args: { flag, sign, severity, note } }) => {
    const known = state.flags[flag]
    if (known?.kind !== 'disease') return 'asking'
    const notes = known.notes + (note?.trim() ? 1 : 0)
    return [{ kind: 'flag_confirmed', body: { flag, sign, severity, notes } }]
  },
  follow_up_flag: (state, { args: { flag } }) => {
    const known = state.flags[flag]
    return known ? [{ kind: 'flag_followed_up', body: { flag, notes: known.notes + 1 } }] : 'asking'
  },
  add_photo: (state, { id, args: { mark, flag } }) => {
    // A flag's is shown when it can be read, not before.
    if (flag !== null) return 'asking'
    const tree = Object.keys(state.marked).find((no) => state.marked[no]?.mark === mark)
    return mark === null || tree === undefined
      ? []
      : [{ kind: 'photo_added', body: { photo: id, tree: Number(tree), mark } }]
  },
}

/** For a short while, by who reported it; what is confirmed somebody acted on. */
function isInTime(state: State, flag: Flag, personId: string, now: Instant): boolean {
  const minutes = (Date.parse(now) - Date.parse(flag.raisedAt)) / 60_000
  const limit = state.orchard.houseRules.withdraw_minutes ?? Number.POSITIVE_INFINITY
  return flag.raisedBy === personId && flag.state !== 'confirmed' && minutes <= limit
}

function keepOutOf({ orchard }: State): number | null {
  return orchard.houseRules.keep_out_m ?? null
}
