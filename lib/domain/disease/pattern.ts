/** Whether sick trees stand together more than chance would have it, in a form that can be said in a sentence. */

import { type Dispersion, dispersionOf } from './dispersion'
import { type JoinCounts, joinCounts, joinMoments, type Moments, zOf } from './join-counts'
import { type Moran, moranOf } from './moran'
import { countJoins } from './neighbours'
import { type Runs, runsAlong, runsOfRows } from './runs'
import { expectedBothSick, type Shuffled, type SickGround, shuffle } from './shuffles'

export type Study = SickGround & {
  /** Trees in a row without a gap, in order. */
  stretches: readonly (readonly number[])[]
  quadrats: readonly (readonly number[])[]
}

export type NotDefined = 'no_trees' | 'none_sick' | 'one_sick' | 'all_sick' | 'no_neighbours'

export type Pattern =
  /** Nothing can be computed, and no number is given. */
  { state: 'not_defined'; why: NotDefined } | ({ state: 'defined' } & Figures)

export type Verdict =
  | 'clustered'
  /** Fewer sick neighbours than chance would give. */
  | 'spread_out'
  /** Neither: chance alone would do it. */
  | 'chance'
  /** Chance would do it, and so few trees could hardly say otherwise. */
  | 'too_few'

export type Figures = {
  verdict: Verdict
  /** How many times as many sick neighbours as chance would give. */
  ratio: number
  sick: number
  trees: number
  counts: JoinCounts
  expected: number
  shuffled: Shuffled
  /** By formula, which holds where all trees are of one kind; null elsewhere. */
  formula: {
    moments: Record<keyof JoinCounts, Moments>
    z: number | null
    moran: Moran | null
  } | null
  rows: ReturnType<typeof runsOfRows>
  dispersion: Dispersion | null
}

/** One in twenty, as is usual. */
const significant = 0.05
/** Under so many sick trees silence says nothing. Common practice, no source. */
const fewSick = 5

export function patternOf(study: Study, rounds: number, chance: () => number): Pattern {
  const { neighbours, sick } = study
  const trees = neighbours.trees
  const sickCount = sick.reduce((sum, one) => sum + one, 0)
  const why = notDefined(trees, sickCount, countJoins(neighbours))
  if (why) return { state: 'not_defined', why }

  const counts = joinCounts(neighbours, sick)
  const expected = expectedBothSick(study)
  const shuffled = shuffle(study, rounds, chance)
  return {
    state: 'defined',
    verdict: verdictOf(shuffled, sickCount),
    ratio: expected > 0 ? counts.bothSick / expected : 0,
    sick: sickCount,
    trees,
    counts,
    expected,
    shuffled,
    formula: isOneKind(study) ? formulaOf(study, counts, sickCount) : null,
    rows: rowsOf(study),
    dispersion: quadratsOf(study),
  }
}

function notDefined(trees: number, sick: number, joins: number): NotDefined | null {
  if (trees === 0) return 'no_trees'
  if (sick === 0) return 'none_sick'
  if (sick === trees) return 'all_sick'
  if (sick === 1) return 'one_sick'
  return joins === 0 ? 'no_neighbours' : null
}

function verdictOf({ pAtLeast, pAtMost }: Shuffled, sick: number): Verdict {
  if (pAtLeast <= significant) return 'clustered'
  if (pAtMost <= significant) return 'spread_out'
  return sick < fewSick ? 'too_few' : 'chance'
}

function isOneKind({ kinds }: Study): boolean {
  return kinds.every((kind) => kind === kinds[0])
}

function formulaOf({ neighbours, sick }: Study, counts: JoinCounts, sickCount: number) {
  const moments = joinMoments(neighbours, sickCount)
  return {
    moments,
    z: zOf(counts.bothSick, moments.bothSick),
    moran: moranOf(neighbours, sick),
  }
}

function rowsOf({ stretches, sick }: Study): Figures['rows'] {
  const runs = stretches.map((stretch) => runsAlong(stretch.map((at) => sick[at] === 1)))
  return runsOfRows(runs.filter((row): row is Runs => row !== null))
}

function quadratsOf({ quadrats, sick }: Study): Dispersion | null {
  const [first] = quadrats
  const counts = quadrats.map((own) => own.filter((at) => sick[at] === 1).length)
  return first ? dispersionOf(counts, first.length) : null
}
