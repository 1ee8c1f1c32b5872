/** What to cut here: the steps for one tree, in order, and how much of it may go this year. */

import type { BudSite, Cultivar, Habit, SizeClass, Species } from '../orchard/types'
import { type Month, proposedOff } from '../safety/species-season'
import { bearsOnShootsAlone, type YearsLimit, yearsLimit } from './canopy-share'
import { type Origin, practice, type Range, secondHand } from './fact'
import { type LastYearsWood, lastYearsWood } from './last-years-wood'
import { type Form, factsOf, renewalShare, spurKind } from './species-facts'

export const stepCodes = [
  'dead_broken_diseased',
  'crossing_rubbing',
  'open_the_centre',
  'free_the_leader',
  'let_light_in',
  'ground_up_inside_out',
  'renew_spurs',
  'renew_shoots',
  'last_years_wood',
  'in_training',
] as const
export type StepCode = (typeof stepCodes)[number]

export type WorkStep = { origin: Origin } & (
  | { code: Exclude<StepCode, 'renew_spurs' | 'renew_shoots' | 'last_years_wood'> }
  /** So much of the bearing wood, or of last year's shoots, is made new this year. */
  | { code: 'renew_shoots'; share: Range }
  | { code: 'renew_spurs'; share: Range; spurs: ReturnType<typeof spurKind> }
  /** `usual`: of all last year's growth so much goes in a usual year, where shoots are shortened at all. */
  | { code: 'last_years_wood'; what: LastYearsWood; usual: Range | 'light' | null }
)

export type TreeToPrune = {
  species: Species
  habit: Habit
  buds: BudSite
  plantedYear: number | null
  sizeClass: SizeClass | null
  /** Nobody pruned it for years: whoever stands before it says so. */
  isNeglected: boolean
  /** A round of training is the lead's, whatever the age. */
  isTrainingRound: boolean
  thisYear: number
  month: Month
}

export type WorkCard = {
  steps: readonly WorkStep[]
  form: Form
  limit: YearsLimit
  /** A neglected tree is brought back over so many winters. */
  winters: Range | null
  /** Usually not pruned in this month; the lead knows why it is today. */
  isOutOfSeason: boolean
}

/** Over two or three years: second hand, general garden references. */
const wintersForNeglected: Range = { least: 2, most: 3 }

/** Common practice, no source: until its fifth year a tree is in training. */
const trainingYears = 5

export function workCard(tree: TreeToPrune): WorkCard {
  const { species, isNeglected, month } = tree
  const isTraining = isInTraining(tree)
  return {
    steps: isTraining ? trainingSteps : bearingSteps(tree),
    form: factsOf(species).form.value,
    limit: yearsLimit(species),
    winters: isSpread(tree) && !isTraining && isNeglected ? wintersForNeglected : null,
    isOutOfSeason: proposedOff(month).includes(species),
  }
}

/** What the cultivar says of itself, as far as anybody knows which it is. */
export function bearingOf(cultivar: Pick<Cultivar, 'habit' | 'buds'> | null) {
  return { habit: cultivar?.habit ?? 'unknown', buds: cultivar?.buds ?? 'unknown' } as const
}

function isInTraining({ plantedYear, sizeClass, isTrainingRound, thisYear }: TreeToPrune): boolean {
  if (isTrainingRound) return true
  return plantedYear === null ? sizeClass === 'young' : thisYear - plantedYear < trainingYears
}

/** The order is common practice, no source. */
const usualOrder: Origin = practice(null)

const trainingSteps: readonly WorkStep[] = [
  { code: 'dead_broken_diseased', origin: usualOrder },
  { code: 'in_training', origin: usualOrder },
]

function bearingSteps(tree: TreeToPrune): WorkStep[] {
  const { form } = factsOf(tree.species)
  return [
    { code: 'dead_broken_diseased', origin: usualOrder },
    { code: 'crossing_rubbing', origin: usualOrder },
    { code: middleStep[form.value], origin: form },
    { code: 'ground_up_inside_out', origin: usualOrder },
    ...renewal(tree),
    shortening(tree),
  ]
}

const middleStep = {
  open_centre: 'open_the_centre',
  leader: 'free_the_leader',
  unknown: 'let_light_in',
} as const

/** Of a neglected tree the first winters take what the first steps say, and no more. */
function renewal(tree: TreeToPrune): WorkStep[] {
  const { spurYears, take } = factsOf(tree.species)
  if (tree.isNeglected && isSpread(tree)) return []
  if (bearsOnShootsAlone(tree.species) && typeof take.value === 'object')
    return [{ code: 'renew_shoots', share: take.value, origin: take }]
  // Where little goes in a usual year a share of the spurs is too much.
  if (spurYears === null || tree.habit === 'shoot' || take.value === 'light') return []
  const { least, most } = renewalShare(spurYears.value)
  // What sources do not agree on goes by the smaller share.
  const share = spurYears.trust === 'not_confirmed' ? { least, most: least } : { least, most }
  return [{ code: 'renew_spurs', spurs: spurKind(tree.species), share, origin: spurYears }]
}

const bySite: Origin = secondHand(null, 'apricot_reference')

function shortening(tree: TreeToPrune): WorkStep {
  const what =
    tree.isNeglected && isSpread(tree) ? ('another_winter' as const) : lastYearsWood(tree)
  const origin = tree.buds === 'unknown' ? usualOrder : bySite
  return { code: 'last_years_wood', what, usual: usualOf(what, tree.species), origin }
}

/** "The outer third" is of one shoot. Of how many shoots, the species says. */
function usualOf(what: LastYearsWood, species: Species): Range | 'light' | null {
  const { value } = factsOf(species).take
  if (what !== 'outer_third' && what !== 'outer_half') return null
  if (bearsOnShootsAlone(species) || value === 'varies') return null
  return value === 'light' ? value : value.of === 'last_years_wood' ? value : null
}

/** The quarter of the crown is not a rule for peaches, whose shoots are made new every year. */
function isSpread({ species }: TreeToPrune): boolean {
  return !bearsOnShootsAlone(species)
}
