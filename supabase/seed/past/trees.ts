/** Which tree a person of the past goes to next. */

import type { Tree } from '@/lib/domain/orchard/types'

import { inRow } from '../demo-orchard'
import type { PastWorker } from './plan'
import { type Day, treeOf } from './winter'

/** The usual house rule: higher trees ask for a ladder, and a child is not let near. */
const ladderFromCm = 250

export function nextOf(day: Day, worker: PastWorker, from: Tree | null): Tree | null {
  const again = day.again.get(worker.name)?.shift()
  if (again !== undefined) return treeOf(day.winter, again)
  const [, ownRow] = day.plan.rows[day.workers.indexOf(worker) % day.plan.rows.length] ?? []
  const far = (tree: Tree) =>
    from
      ? Math.abs(tree.row - from.row) * 20 + Math.abs(tree.place - from.place)
      : Number(tree.row !== ownRow)
  const [nearest] = treesOf(day)
    .filter((tree) => mayTake(day, worker, tree))
    .toSorted((a, b) => far(a) - far(b))
  return nearest ?? null
}

/** All of the day's rows, whatever has become of them. */
export function treesOf({ plan, winter }: Day): Tree[] {
  return plan.rows.flatMap(([code, row]) => inRow(winter.orchard.inventory, code, row))
}

function mayTake({ winter, again }: Day, worker: PastWorker, tree: Tree): boolean {
  const hasChild = worker.with?.part === 'learners'
  return (
    tree.life === 'standing' &&
    winter.species.includes(tree.species) &&
    !winter.done.has(tree.no) &&
    !winter.held.has(tree.no) &&
    ![...again.values()].flat().includes(tree.no) &&
    (!tree.asksSaw || (worker.saw === true && !winter.resting.has(worker.with?.name ?? ''))) &&
    !(hasChild && (tree.heightCm ?? 0) > ladderFromCm) &&
    ![...winter.held].some((no) => isBeside(tree, treeOf(winter, no)))
  )
}

/** Where one of the two asks for a saw nobody works beside it. */
function isBeside(a: Tree, b: Tree): boolean {
  return (
    (a.asksSaw || b.asksSaw) &&
    a.block === b.block &&
    Math.abs(a.row - b.row) <= 1 &&
    Math.abs(a.place - b.place) <= 1
  )
}
