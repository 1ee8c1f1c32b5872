/** The steps for one tree, and how far along one is. */

import { formOf, type WorkStep, workSteps } from '@/lib/domain/pruning/order'
import type { TreeFacts } from './use-tree'

export type TreeSteps = { steps: readonly WorkStep[]; form: ReturnType<typeof formOf> }

export function stepsOf({ tree, cultivar }: TreeFacts, thisYear: number): TreeSteps {
  return {
    steps: workSteps({
      species: tree.species,
      plantedYear: tree.plantedYear,
      habit: cultivar?.habit ?? 'unknown',
      thisYear,
    }),
    form: formOf(tree.species),
  }
}

/** What the work already amounts to when it has to stop at once; null: nothing yet. */
export function shareAfter(stepsDone: number, steps: number): number | null {
  return stepsDone === 0 ? null : Math.min(99, Math.round((stepsDone / steps) * 100))
}
