/**
 * The order of work in the tree in hand. Common practice, no source; open centre or leader by
 * species as in a UC Master Gardener column (San Joaquin).
 */

import type { Cultivar, Habit, Species, Tree } from '../orchard/types'

export const forms = ['open_centre', 'leader', 'unknown'] as const
/** How a species is usually grown. This tree may differ, and then its lead says so. */
export type Form = (typeof forms)[number]

export const stepCodes = [
  'dead_broken_diseased',
  'crossing_rubbing',
  'open_the_centre',
  'free_the_leader',
  'let_light_in',
  'ground_up_inside_out',
  'last_years_wood',
] as const
export type StepCode = (typeof stepCodes)[number]

/** What to do with last year's shoots, as far as the cultivar's habit alone says it. */
export type LastYearsWood =
  /** Fruit buds sit low on the shoot: the outer third may go. */
  | 'outer_third'
  /** The crop is on the shoots: thin them, leave their tips. */
  | 'do_not_shorten'
  /** Nobody knows where this one bears. */
  | 'leave_and_ask'
  /** A tree in training is the lead's. */
  | 'leads'

export type WorkStep =
  | { code: Exclude<StepCode, 'last_years_wood'> }
  | { code: 'last_years_wood'; what: LastYearsWood }

export type TreeInHand = {
  species: Tree['species']
  plantedYear: Tree['plantedYear']
  habit: Cultivar['habit']
  thisYear: number
}

export function workSteps(tree: TreeInHand): WorkStep[] {
  return [
    { code: 'dead_broken_diseased' },
    { code: 'crossing_rubbing' },
    { code: middleStep[formOf(tree.species)] },
    { code: 'ground_up_inside_out' },
    { code: 'last_years_wood', what: lastYearsWood(tree) },
  ]
}

export function formOf(species: Species): Form {
  return usualForm[species]
}

const usualForm: Record<Species, Form> = {
  almond: 'open_centre',
  apricot: 'open_centre',
  cherry: 'open_centre',
  sour_cherry: 'open_centre',
  fig: 'open_centre',
  nectarine: 'open_centre',
  peach: 'open_centre',
  pomegranate: 'open_centre',
  plum: 'open_centre',
  european_plum: 'open_centre',
  japanese_plum: 'open_centre',
  apple: 'leader',
  pear: 'leader',
  persimmon: 'leader',
  quince: 'leader',
  // Modified leader, from memory.
  walnut: 'leader',
  other: 'unknown',
}

const middleStep = {
  open_centre: 'open_the_centre',
  leader: 'free_the_leader',
  unknown: 'let_light_in',
} as const

/** Common practice, no source: until its fifth year a tree is in training. */
const trainingYears = 5

function lastYearsWood({ plantedYear, habit, thisYear }: TreeInHand): LastYearsWood {
  if (plantedYear !== null && thisYear - plantedYear < trainingYears) return 'leads'
  return byHabit[habit]
}

/** Where spurs bear too, a crop stays on the tree when the shoots lose their outer third. */
const byHabit: Record<Habit, LastYearsWood> = {
  spur: 'outer_third',
  shoot: 'do_not_shorten',
  both: 'outer_third',
  unknown: 'leave_and_ask',
}
