/** What of a survey the map shows. */

import type { Case } from '@/lib/domain/disease/scouting'
import type { Survey } from '@/lib/domain/disease/survey'
import type { Look, TreeLooks } from '@/lib/domain/orchard/status'
import type { DiseaseShown } from '../map/map-props'

export function diseaseShown(cases: readonly Case[], found: Survey | null): DiseaseShown {
  const numbers = (confirmed: boolean) =>
    new Set(cases.filter((one) => one.confirmed === confirmed).map(({ no }) => no))
  return {
    confirmed: numbers(true),
    suspected: numbers(false),
    toScout: new Set(found?.toScout.map(({ no }) => no)),
  }
}

/** The trees that it is not about step back. */
export function othersThan(
  { confirmed, suspected, toScout }: DiseaseShown,
  trees: readonly { no: number }[]
): ReadonlySet<number> {
  if (confirmed.size + suspected.size === 0) return new Set()
  return new Set(
    trees.flatMap(({ no }) =>
      confirmed.has(no) || suspected.has(no) || toScout.has(no) ? [] : [no]
    )
  )
}

/** A sick tree is a sick tree here, also where its work is begun or done; danger still stands before it. */
export function sickFirst(looks: TreeLooks, { confirmed, suspected }: DiseaseShown): TreeLooks {
  const sick = [...confirmed, ...suspected].flatMap((no): [number, Look][] => {
    const look = looks.get(no)
    return look && look.status !== 'arborist' ? [[no, { ...look, status: 'disease' }]] : []
  })
  return looks.with(sick)
}
