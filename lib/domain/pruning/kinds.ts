/** The kinds of trees that stand together, as far as they are pruned differently: for a sheet of paper. */

import { groupBy } from '@/lib/util/group-by'

import type { Cultivar, Tree } from '../orchard/types'
import type { Month } from '../safety/species-season'
import { bearingOf, type WorkCard, workCard } from './work-card'

export type KindToPrune = {
  species: Tree['species']
  /** Every cultivar of the kind by number; null: trees of which nobody knows which they are. */
  cultivars: readonly (number | null)[]
  trees: number
  /** Of a grown tree that was pruned every year. */
  card: WorkCard
}

type Standing = Pick<Tree, 'species' | 'cultivar'>
type When = { thisYear: number; month: Month }

/** The commonest first. Two cultivars with the same steps are one kind. */
export function kindsToPrune(
  trees: readonly Standing[],
  cultivars: readonly Cultivar[],
  when: When
): KindToPrune[] {
  const bearings = new Map(cultivars.map((cultivar) => [cultivar.no, bearingOf(cultivar)]))
  const cardOf = ({ species, cultivar }: Standing) =>
    workCard({
      species,
      ...(bearings.get(cultivar ?? 0) ?? bearingOf(null)),
      plantedYear: null,
      sizeClass: null,
      isNeglected: false,
      isTrainingRound: false,
      ...when,
    })
  const ofKind = [
    ...groupBy(trees, ({ species, cultivar }) => `${species} ${cultivar}`).values(),
  ].flatMap((own) => (own[0] ? [{ ...own[0], count: own.length, card: cardOf(own[0]) }] : []))
  const alike = groupBy(ofKind, ({ species, card }) => `${species} ${stepsOf(card)}`)
  return [...alike.values()]
    .flatMap((own) =>
      own[0]
        ? [
            {
              species: own[0].species,
              cultivars: own.map(({ cultivar }) => cultivar),
              trees: own.reduce((sum, { count }) => sum + count, 0),
              card: own[0].card,
            },
          ]
        : []
    )
    .toSorted((a, b) => b.trees - a.trees)
}

/** What is done, whatever says so. */
function stepsOf({ steps }: WorkCard): string {
  return JSON.stringify(steps.map(({ origin, ...step }) => step))
}
