/** How somebody wants to work on a tree: with whom, and whether off the ground. */

import type { Tree } from '@/lib/domain/orchard/types'
import type { ArgsOf } from '@/lib/events/commands'
import type { Wish } from '@/lib/events/missing'

export const companies = ['alone', 'helper', 'buddy', 'learner'] as const
/** A buddy works elsewhere, in earshot. */
export type Company = (typeof companies)[number]

export type ClaimWish = {
  company: Company | null
  /** Who it is; null while nobody is named. */
  person: string | null
  ladder: boolean
}

/** Alone, unless the tree asks for two; then somebody has to be named. */
export function firstWish(tree: Tree, partner: string | null): ClaimWish {
  if (partner !== null) return { company: 'helper', person: partner, ladder: false }
  return { company: tree.asksSaw ? null : 'alone', person: null, ladder: false }
}

export function asksForTwo(tree: Tree, wish: ClaimWish): boolean {
  return tree.asksSaw || wish.ladder
}

/** A learner is not the second person that ladder and saw ask for. */
export function isSaid(tree: Tree, { company, person, ladder }: ClaimWish): boolean {
  if (company === null) return false
  if (company === 'alone') return !(tree.asksSaw || ladder)
  return person !== null
}

export function wishOf({
  company,
  person,
  ladder,
}: ClaimWish): Required<Omit<Wish, 'kind' | 'today' | 'now'>> {
  const named = person === null ? [] : [person]
  return {
    ladder,
    helpers: company === 'helper' ? named : [],
    learners: company === 'learner' ? named : [],
    buddy: company === 'buddy' ? person : null,
  }
}

export function claimArgs(tree: number, wish: ClaimWish): ArgsOf<'claim_tree'> {
  const { ladder, helpers, learners, buddy } = wishOf(wish)
  return { tree, ladder, helpers: [...helpers], learners: [...learners], buddy }
}
