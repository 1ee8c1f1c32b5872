/** What the referee will say to a deal, and what whoever deals should know, before it is asked for. */

import type { Refusal } from '@/lib/events/answer'
import { dealRules } from '@/lib/events/missing'
import type { View } from '@/lib/hooks'
import type { NotDealt } from './dealing'

/** Trees against whom or which the same can be said. */
export type Against = NotDealt & { people: readonly string[] }

export type DealCheck = {
  /** What can be dealt. */
  can: readonly number[]
  /** Each reason with its trees, and who is at them. */
  cannot: readonly Against[]
  cannotCount: number
  /** Kept for others now, who lose them. */
  fromOthers: readonly Against[]
  /** Next to somebody's ladder or saw work: dealing lifts that rule. */
  nextTo: readonly Against[]
  /** Of all that is picked: what is kept for somebody and can be taken back. */
  dealt: readonly number[]
}

export function checkDeal(
  { state, ground }: Pick<View, 'state' | 'ground'>,
  picked: readonly number[],
  to: readonly string[]
): DealCheck {
  if (!state) return { ...nothing, can: picked }
  const rules = dealRules(state, ground)
  const refusals = picked.flatMap((tree) =>
    rules.refusalsOf(tree).map((refusal) => ({ tree, refusal }))
  )
  const refused = new Set(refusals.map(({ tree }) => tree))
  const can = picked.filter((tree) => !refused.has(tree))
  const dealt = picked.filter((tree) => Object.hasOwn(state.deals, tree))
  const isTaken = (tree: number) => {
    const now = state.deals[tree] ?? []
    return now.length > 0 && (now.length !== to.length || now.some((id) => !to.includes(id)))
  }
  return {
    can,
    cannot: gathered(refusals),
    cannotCount: refused.size,
    fromOthers: gathered(
      can
        .filter((tree) => to.length > 0 && isTaken(tree))
        .flatMap((tree) =>
          (state.deals[tree] ?? []).map((person) => ({
            tree,
            refusal: { code: 'dealt_to_another', detail: { person } },
          }))
        )
    ),
    nextTo: gathered(
      can.flatMap((tree) => {
        const near = rules.worksNextTo(tree, to)
        if (!near) return []
        const claim = Object.values(state.claims).find((one) => one.tree === near.detail?.tree)
        return Object.keys(claim?.people ?? {}).map((person) => ({
          tree,
          refusal: { ...near, detail: { person } },
        }))
      })
    ),
    dealt,
  }
}

const nothing: DealCheck = {
  can: [],
  cannot: [],
  cannotCount: 0,
  fromOthers: [],
  nextTo: [],
  dealt: [],
}

/** By reason: the trees, and the people that stand in the way, each once. */
function gathered(found: readonly { tree: number; refusal: Refusal }[]): Against[] {
  const codes = [...new Set(found.map(({ refusal }) => refusal.code))]
  return codes.map((code) => {
    const ofCode = found.filter(({ refusal }) => refusal.code === code)
    const people = ofCode.map(({ refusal }) => refusal.detail?.person)
    return {
      code,
      trees: [...new Set(ofCode.map(({ tree }) => tree))],
      people: [...new Set(people.filter((id) => typeof id === 'string'))],
    }
  })
}
