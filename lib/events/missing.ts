/** Everything that stands between a person and a tree, as far as the phone knows. */

import type { Refusal } from './answer'
import type { Ground } from './ground'
import { missingOfPerson } from './missing-person'
import { treeRules, type Wish } from './missing-tree'
import type { State } from './state'

export {
  asksLadder,
  type DealRules,
  dealRules,
  missingOfTree,
  treeRules,
  type Wish,
} from './missing-tree'
export { missingOfPerson }

export function missingForClaim(
  state: State,
  ground: Ground,
  treeNo: number,
  personId: string,
  wish: Wish = {}
): Refusal[] {
  return [
    ...missingOfPerson(state, personId, {
      ground,
      ...(wish.kind && { kind: wish.kind }),
      ...(wish.now && { now: wish.now }),
    }),
    ...(wish.helpers ?? []).flatMap((id) => notReady(state, id, 'helper')),
    ...(wish.learners ?? []).flatMap((id) => notReady(state, id, 'learner')),
    ...treeRules(state, ground, personId, wish)(treeNo),
  ]
}

function notReady(state: State, personId: string, part: 'helper' | 'learner'): Refusal[] {
  const codes = missingOfPerson(state, personId, { kind: 'other', part }).map(({ code }) => code)
  return codes.length > 0 ? [{ code: 'helper_not_ready', detail: { person: personId, codes } }] : []
}
