/** From visits to what a whole tree took: minutes of one person, whoever shared it and however often it was left. */

import { groupBy } from '@/lib/util/group-by'

import { sizeClassOf } from '../orchard/size-class'
import type { SizeClass, Species, Tree } from '../orchard/types'

export type Visit = {
  tree: number
  shift: string
  round: string
  result: 'done' | 'begun' | 'also_worked'
  /** Breaks and stops taken out. Null: nobody knows when it was begun. */
  seconds: number | null
  /** Who worked on it; half a time counts half. */
  people: number
  teaching: boolean
}

/** Trees that are alike for the time they take. */
export type Kind = { species: Species; size: SizeClass | null }

export type TreeTime = Kind & { shift: string; minutes: number }

/** Less is a tap for a tree that was done without the phone. */
const leastMinutes = 1

export function kindOf(tree: Pick<Tree, 'species' | 'sizeClass' | 'heightCm' | 'trunkCm'>): Kind {
  return { species: tree.species, size: tree.sizeClass ?? sizeClassOf(tree) }
}

export function keyOfKind({ species, size }: Kind): string {
  return `${species}|${size ?? ''}`
}

/**
 * One time for each tree that was finished in its round. A tree left half done counts once, with all its visits;
 * one at which somebody was taught, or of which a part has no time, says nothing about the pace.
 */
export function treeTimesOf(
  visits: readonly Visit[],
  trees: ReadonlyMap<number, Tree>
): TreeTime[] {
  const byTree = groupBy(
    visits.filter(({ result }) => result !== 'also_worked'),
    ({ round, tree }) => `${round}|${tree}`
  )
  return [...byTree.values()].flatMap((own) => {
    const done = own.find(({ result }) => result === 'done')
    const tree = done && trees.get(done.tree)
    if (!tree || own.some(({ seconds, teaching }) => seconds === null || teaching)) return []
    const minutes = own.reduce((sum, visit) => sum + personMinutesOf(visit), 0)
    return minutes < leastMinutes ? [] : [{ ...kindOf(tree), shift: done.shift, minutes }]
  })
}

export function personMinutesOf({ seconds, people }: Pick<Visit, 'seconds' | 'people'>): number {
  return ((seconds ?? 0) * people) / 60
}
