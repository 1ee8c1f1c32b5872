/** What of an orchard is counted: the kinds of tree that have it, row by row and in quadrats. */

import { groupBy } from '@/lib/util/group-by'

import { species, type Tree } from '../orchard/types'
import { type Neighbours, neighboursAmong } from './neighbours'
import type { Study } from './pattern'

/** Two rows of three: six trees, as in the published examples. */
const quadratRows = 2
const quadratPlaces = 3

/**
 * `sick` are numbers of trees. Only kinds of which one is sick are counted: whoever has no apricots
 * with gum learns nothing from the apples beside them.
 */
export function studyOf(
  trees: readonly Tree[],
  neighbours: Neighbours,
  sick: ReadonlySet<number>
): Study {
  const kinds = new Set(trees.filter(({ no }) => sick.has(no)).map((tree) => tree.species))
  const kept = [...trees.keys()].filter((at) => {
    const tree = trees[at]
    return tree !== undefined && kinds.has(tree.species)
  })
  const own = kept.flatMap((at) => trees[at] ?? [])
  return {
    neighbours: neighboursAmong(neighbours, kept),
    sick: Uint8Array.from(own, ({ no }) => (sick.has(no) ? 1 : 0)),
    kinds: Uint8Array.from(own, (tree) => species.indexOf(tree.species)),
    stretches: stretchesOf(own),
    quadrats: quadratsOf(own),
  }
}

/** A gap, or a tree of another kind, ends a stretch. */
function stretchesOf(trees: readonly Tree[]): number[][] {
  const rows = groupBy(trees.keys(), (at) => `${trees[at]?.block} ${trees[at]?.row}`)
  return [...rows.values()].flatMap((row) => {
    const inOrder = row.toSorted((a, b) => placeOf(a) - placeOf(b))
    const stretches: number[][] = []
    for (const at of inOrder) {
      const last = stretches.at(-1)
      const end = last?.at(-1)
      if (last && end !== undefined && placeOf(at) === placeOf(end) + 1) last.push(at)
      else stretches.push([at])
    }
    return stretches
  })

  function placeOf(at: number): number {
    return trees[at]?.place ?? 0
  }
}

/** Only full ones, since all must hold equally many trees. */
function quadratsOf(trees: readonly Tree[]): number[][] {
  const cells = groupBy(trees.keys(), (at) => {
    const { block = 0, row = 0, place = 0 } = trees[at] ?? {}
    return `${block} ${Math.floor((row - 1) / quadratRows)} ${Math.floor((place - 1) / quadratPlaces)}`
  })
  return [...cells.values()].filter((cell) => cell.length === quadratRows * quadratPlaces)
}
