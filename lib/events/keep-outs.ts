/** The ground around a hazard: who is inside is told to come out, and says that they are. */

import * as shape from '@/lib/util/shape'

import type { Folds, Predictions } from './family'
import { when } from './family'
import { type Ground, metresApart } from './ground'
import { soiledAt } from './look-ups'
import { withChanged } from './record'
import { id, inside } from './shapes'
import type { Claim, Flag, State } from './state'

const changed = shape.object({
  flag: id,
  keepOutM: shape.number,
  inside: shape.withDefault(inside, {}),
})
const answered = shape.object({ flag: id, person: id })

export const keepOutFolds: Folds = {
  keep_out_changed: when(changed, (state, { flag, keepOutM, inside }) =>
    withFlag(state, flag, (known) => ({
      ...known,
      keepOutM,
      inside: { ...known.inside, ...inside },
    }))
  ),
  keep_out_answered: when(answered, (state, { flag, person }) =>
    withFlag(state, flag, (known) => ({
      ...known,
      inside: withChanged(known.inside, person, (there) => ({ ...there, out: true })),
    }))
  ),
}

export const keepOutPredictions: Predictions = {
  answer_keep_out: (_, { personId, args }) => [
    { kind: 'keep_out_answered', body: { flag: args.flag, person: personId } },
  ],
}

export function withFlag(state: State, flag: string, change: (known: Flag) => Flag): State {
  return { ...state, flags: withChanged(state.flags, flag, change) }
}

type Hazard = { tree: number; keepOutM: number | null }
type Told = { personId: string; share: number | null }

/** What a hazard does to the claims at its tree and inside its keep-out, as private.close_off. */
export function closedOff(
  state: State,
  ground: Ground,
  hazard: Hazard,
  { personId, share }: Told
): Record<string, unknown> {
  const ended = Object.entries(state.claims).filter(([, claim]) =>
    isInside(ground, claim, hazard, hazard.keepOutM ?? 0)
  )
  const isOwn = (claim: Claim) => claim.tree === hazard.tree && personId in claim.people
  const people = ended.flatMap(([, { tree, people }]) =>
    Object.keys(people)
      .filter((id) => id !== personId)
      .map((id) => [id, { tree, out: false }] as const)
  )
  return {
    claimsEnded: ended.map(([id]) => id),
    work: ended.flatMap(([, claim]) => {
      const { tree, kind } = claim
      if (tree === null || kind !== 'prune') return []
      // Who holds the tree says how far it is; of the others nobody knows.
      if (isOwn(claim)) return share === null ? [] : [[tree, 'begun', share]]
      return state.work[tree] ? [] : [[tree, 'begun', null]]
    }),
    dirty: ended.flatMap(
      ([, { tree, people }]) => soiledAt(state, tree, Object.keys(people)).dirty ?? []
    ),
    inside: Object.fromEntries(people),
  }
}

function isInside(ground: Ground, claim: Claim, hazard: Hazard, keepOutM: number): boolean {
  if (claim.tree === hazard.tree) return true
  const at = ground.trees.get(hazard.tree)
  if (!at) return false
  // Brush: a row is inside as soon as one of its trees is.
  const { row } = claim
  const trees =
    row === null
      ? [ground.trees.get(claim.tree ?? 0)]
      : [...ground.trees.values()].filter(
          (tree) => tree.block === row.block && tree.row === row.row
        )
  return trees.some((tree) => {
    const metres = tree && metresApart(ground, tree, at)
    return tree?.no === at.no || (metres != null && metres <= keepOutM)
  })
}
