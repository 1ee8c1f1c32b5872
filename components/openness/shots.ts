/** The two photos of one crown, before and after, as they are kept on this phone. */

import type { Openness } from '@/lib/domain/pruning/openness'

export type Shot = Pick<Openness, 'gap' | 'low' | 'high' | 'confidence' | 'doubts'> & {
  /** Small pictures as addresses: the photo, and what of it was taken for sky. */
  photo: string
  seen: string
}

export const moments = ['before', 'after'] as const
export type Moment = (typeof moments)[number]

export type Shots = Record<Moment, Shot | null>

export const noShots: Shots = { before: null, after: null }

/** The tree photographed last comes last. */
export type KeptShots = readonly { tree: number; shots: Shots }[]

/** A phone has other things to keep. */
const mostTrees = 12

export function shotsAt(kept: KeptShots, tree: number): Shots {
  return kept.find((one) => one.tree === tree)?.shots ?? noShots
}

export function withShot(
  kept: KeptShots,
  at: { tree: number; moment: Moment },
  shot: Shot
): KeptShots {
  const shots = { ...shotsAt(kept, at.tree), [at.moment]: shot }
  return [...withoutShots(kept, at.tree), { tree: at.tree, shots }].slice(-mostTrees)
}

export function withoutShots(kept: KeptShots, tree: number): KeptShots {
  return kept.filter((one) => one.tree !== tree)
}

export type Change = { state: 'more' | 'less' | 'same'; points: number }

/** Where the two ranges meet, nobody can tell. Null while one is missing. */
export function changeOf({ before, after }: Shots): Change | null {
  if (!before || !after) return null
  const points = Math.round(100 * after.gap) - Math.round(100 * before.gap)
  if (after.low > before.high) return { state: 'more', points }
  if (after.high < before.low) return { state: 'less', points: -points }
  return { state: 'same', points: 0 }
}
