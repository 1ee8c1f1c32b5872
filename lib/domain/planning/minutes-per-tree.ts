/**
 * Minutes of one person per tree, learned from the trees finished so far.
 *
 * Times are log-normal. The logarithm of a time is what is usual for the size, times a pace of this orchard, times
 * what the species, the kind and the day make of it, times chance. Each of these is pulled towards "as usual" the
 * more the less is known about it (Gelman and Hill, Data Analysis Using Regression and Multilevel Models, 2007,
 * chapter 12), so that three quick plums do not promise quick plums. Trees that are not finished count too, as
 * taking longer than so far: early in the day the quick ones are done and the long ones are not (Tobin 1958).
 */

import { normalTail } from '../disease/tails'
import { choleskyOf, type Root, solveBoth, solveLower } from './cholesky'
import { type Kind, keyOfKind, type TreeTime } from './tree-times'
import { newcomersTake, usualMinutesOf } from './usual-minutes'
import { drawIn } from './without-strays'

/** How far things go from the usual, as a standard deviation of the logarithm. Common practice, no source. */
export const spreads = { pace: 0.4, species: 0.25, kind: 0.25, day: 0.2, chance: 0.5 }
/** As many trees the guess of chance is worth. */
const chanceWeight = 5

/** Below this the published figures say more than the trees. */
export const treesNeeded = 5

export type Learned = {
  /** Finished trees that it rests on, of each kind and of all. */
  trees: number
  treesOfKind: ReadonlyMap<string, number>
  /** Where each effect stands in the numbers below. */
  effects: ReadonlyMap<string, number>
  centre: readonly number[]
  /** Of what is known about the effects: the inverse of their covariance. */
  root: Root
  /** Spread of one tree, and how many trees it is known from. */
  chance: number
  weight: number
}

type Asked = {
  /** Trees that take longer than this. */
  unfinished: readonly TreeTime[]
  /** Also of what else one will ask. */
  kinds: readonly Kind[]
  /** The shift that is going on, for which its own pace counts. */
  day: string
}

export function learnMinutes(
  times: readonly TreeTime[],
  { unfinished, kinds, day }: Asked
): Learned {
  const effects = new Map<string, number>()
  const known = (names: readonly string[]) =>
    names.map((name) => {
      const at = effects.get(name) ?? effects.size
      effects.set(name, at)
      return at
    })
  const logOf = (time: TreeTime) => Math.log(time.minutes / usualMinutesOf(time.size))
  const draw = drawIn(times.map(logOf))
  const rowOf = (time: TreeTime, isAtLeast: boolean): Row => ({
    effects: known(namesOf(time, time.shift)),
    log: draw(logOf(time)),
    isAtLeast,
  })
  const rows = [
    ...times.map((time) => rowOf(time, false)),
    ...unfinished.filter(({ minutes }) => minutes > 0).map((time) => rowOf(time, true)),
  ]
  for (const kind of kinds) known(namesOf(kind, day))

  const treesOfKind = new Map<string, number>()
  for (const time of times) {
    treesOfKind.set(keyOfKind(time), (treesOfKind.get(keyOfKind(time)) ?? 0) + 1)
  }
  return { trees: times.length, treesOfKind, effects, ...fitted(rows, [...effects.keys()]) }
}

function namesOf(kind: Kind, day: string): string[] {
  return ['pace', `species ${kind.species}`, `kind ${keyOfKind(kind)}`, `day ${day}`]
}

/** At least: the tree will take longer than its logarithm says. */
type Row = { effects: readonly number[]; log: number; isAtLeast: boolean }
type Fit = Pick<Learned, 'centre' | 'root' | 'chance' | 'weight'>

const turns = 6

/** How far chance goes is not known beforehand: guessed, fitted, and counted from what is left over. */
function fitted(rows: readonly Row[], names: readonly string[]): Fit {
  let fit: Fit = { centre: [], root: [], chance: spreads.chance, weight: chanceWeight }
  let says = rows.map((row) => saying(row, Math.log(newcomersTake), fit.chance))
  for (let turn = 0; turn < turns; turn++) {
    fit = { ...fit, ...fitWith(fit.chance, says, names) }
    says = rows.map((row) => saying(row, sumAt(fit.centre, row), fit.chance))
    const left = says.reduce((sum, { left }) => sum + left, 0)
    // Of as many trees as effects could follow them, nothing is left over.
    const followed = says.reduce(
      (sum, { effects, worth }) => sum + worth * varianceAt(fit.root, effects),
      0
    )
    const weight = chanceWeight + Math.max(0, rows.length - followed / fit.chance ** 2)
    fit = {
      ...fit,
      weight,
      chance: Math.sqrt((chanceWeight * spreads.chance ** 2 + left) / weight),
    }
  }
  return fit
}

/** What a row says as if it were a measured value, how much that is worth, and how far it lies off, squared. */
type Says = { effects: readonly number[]; value: number; worth: number; left: number }

/** Of a tree that will take longer: Newton's step towards the likeliest (Tobin's model). */
function saying({ effects, log, isAtLeast }: Row, centre: number, chance: number): Says {
  if (!isAtLeast) return { effects, value: log, worth: 1, left: (log - centre) ** 2 }
  const beyond = (log - centre) / chance
  const steep = hazardAt(beyond)
  const worth = steep * (steep - beyond)
  return {
    effects,
    value: centre + (worth > 0 ? (chance * steep) / worth : 0),
    worth,
    left: chance ** 2 * (1 + beyond * steep),
  }
}

/** Of the normal distribution: its density over what is left of it. */
function hazardAt(z: number): number {
  // Further out the tail is too thin to be divided by.
  if (z > 6) return z + 1 / z
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI) / normalTail(-z)
}

function fitWith(
  chance: number,
  says: readonly Says[],
  names: readonly string[]
): Pick<Fit, 'centre' | 'root'> {
  const before = names.map((name) => spreadOf(name) ** -2)
  const inverse = names.map((_, row) => names.map((_, at) => (row === at ? (before[at] ?? 0) : 0)))
  const right = names.map((name, at) =>
    name === 'pace' ? Math.log(newcomersTake) * (before[at] ?? 0) : 0
  )
  for (const { effects, value, worth } of says) {
    const precision = worth / chance ** 2
    for (const one of effects) {
      right[one] = (right[one] ?? 0) + value * precision
      const line = inverse[one] ?? []
      for (const other of effects) line[other] = (line[other] ?? 0) + precision
    }
  }
  const root = choleskyOf(inverse)
  return { root, centre: solveBoth(root, right) }
}

function spreadOf(name: string): number {
  if (name === 'pace') return spreads.pace
  if (name.startsWith('day ')) return spreads.day
  return name.startsWith('kind ') ? spreads.kind : spreads.species
}

function sumAt(values: readonly number[], { effects }: Pick<Row, 'effects'>): number {
  return effects.reduce((sum, at) => sum + (values[at] ?? 0), 0)
}

/** How uncertain the sum of these effects is. */
function varianceAt(root: Root, effects: readonly number[]): number {
  const asked = root.map((_, at) => (effects.includes(at) ? 1 : 0))
  return solveLower(root, asked).reduce((sum, value) => sum + value * value, 0)
}

/** The effects of a kind on a day. What nobody has asked for has none: as usual. */
export function effectsOf({ effects }: Learned, kind: Kind, day: string): number[] {
  return namesOf(kind, day).flatMap((name) => effects.get(name) ?? [])
}

/** From the tenth to the ninetieth of a hundred. */
export type Range = { from: number; to: number }
const tenth = 1.2816

export type MinutesOfKind =
  | { state: 'not_enough'; trees: number; needed: number }
  | ({ state: 'known'; minutes: number; trees: number } & Range)

/** What half of the trees of this kind take at most, and between what it lies eight times out of ten. */
export function minutesOf(learned: Learned, kind: Kind, day: string): MinutesOfKind {
  if (learned.trees < treesNeeded) {
    return { state: 'not_enough', trees: learned.trees, needed: treesNeeded }
  }
  const effects = effectsOf(learned, kind, day)
  const centre = Math.log(usualMinutesOf(kind.size)) + sumAt(learned.centre, { effects })
  const reach = tenth * Math.sqrt(varianceAt(learned.root, effects))
  return {
    state: 'known',
    minutes: Math.exp(centre),
    from: Math.exp(centre - reach),
    to: Math.exp(centre + reach),
    trees: learned.treesOfKind.get(keyOfKind(kind)) ?? 0,
  }
}

/** What one tree takes on average: more than the middle, since long ones are longer than short ones are short. */
export function meanMinutesOf(learned: Learned, kind: Kind, day: string): number {
  const effects = effectsOf(learned, kind, day)
  const spread = varianceAt(learned.root, effects) + learned.chance ** 2
  return usualMinutesOf(kind.size) * Math.exp(sumAt(learned.centre, { effects }) + spread / 2)
}
