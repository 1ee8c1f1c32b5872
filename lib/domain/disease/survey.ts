/** All that is said of a disease in an orchard or a block: how much, in what pattern, and where to look next. */

import { chanceFrom } from '@/lib/util/chance'
import { groupBy } from '@/lib/util/group-by'

import { type Block, stands, type Tree } from '../orchard/types'
import { besideEachOther } from './beside'
import { type Incidence, incidenceOf } from './incidence'
import { neighboursAmong } from './neighbours'
import { type Pattern, patternOf } from './pattern'
import { type FlaggedTree, type ToReplace, treesToReplace } from './replace'
import { type Case, type ToScout, treesToScout } from './scouting'
import { studyOf } from './study'

export type SurveyAsked = {
  trees: readonly Tree[]
  blocks: readonly Block[]
  /** With the sign that is asked for, in whichever block. */
  cases: readonly Case[]
  /** All trees flagged for disease, whatever the sign. */
  known: readonly (FlaggedTree & { no: number })[]
  /** Null: the whole orchard. */
  block: number | null
  rings: 1 | 2
  /** Of today: how old trees are. */
  year: number
  /** The same seed gives the same answer. */
  seed: number
}

export type Survey = {
  /** Of the kinds of tree that have it. Null: there is none. */
  incidence: Incidence | null
  pattern: Pattern
  /** The most at risk first. */
  toScout: readonly ToScout[]
  /** Whatever the sign; the most reasons first. */
  toReplace: readonly ToReplace[]
}

/** One more makes a thousand: what was seen is one of the ways. */
const rounds = 999

export function survey(asked: SurveyAsked): Survey {
  const trees = asked.trees.filter(stands)
  const neighbours = besideEachOther(trees, asked.blocks)
  const inScope = [...trees.keys()].filter(
    (at) => asked.block === null || trees[at]?.block === asked.block
  )
  const own = inScope.flatMap((at) => trees[at] ?? [])
  const scope = new Set(own.map(({ no }) => no))
  const cases = asked.cases.filter(({ no }) => scope.has(no))
  const study = studyOf(
    own,
    neighboursAmong(neighbours, inScope),
    new Set(cases.map(({ no }) => no))
  )
  const sick = study.sick.reduce((sum, one) => sum + one, 0)
  return {
    incidence: incidenceOf(sick, study.sick.length),
    pattern: patternOf(study, rounds, chanceFrom(asked.seed)),
    toScout: treesToScout({
      trees,
      blocks: asked.blocks,
      neighbours,
      cases,
      known: new Set(asked.known.map(({ no }) => no)),
      rings: asked.rings,
    }),
    toReplace: treesToReplace({
      trees,
      neighbours,
      flags: groupBy(asked.known, ({ no }) => no),
      year: asked.year,
    }).filter(({ no }) => scope.has(no)),
  }
}
