/**
 * Which trees somebody should think about taking out, and why: dead, or badly sick and old, or badly
 * sick beside young ones. A proposal; the manager decides.
 */

import type { Species, Tree } from '../orchard/types'
import { type Neighbours, neighboursAt } from './neighbours'

export type ReplaceReason =
  | { code: 'dead' }
  | { code: 'badly_sick'; sign: string }
  /** Years in the ground, and how long its kind usually bears well. */
  | { code: 'old'; years: number; usualYears: number }
  | { code: 'beside_young'; trees: number }
  | { code: 'sick_neighbours'; trees: number }

export type ToReplace = { no: number; reasons: readonly ReplaceReason[] }

/** Years that a tree usually bears well. Common practice, no source; a well-kept one may stand far longer. */
export const usualYears: Partial<Record<Species, number>> = {
  peach: 15,
  nectarine: 15,
  apricot: 20,
  plum: 25,
  european_plum: 25,
  japanese_plum: 25,
  almond: 25,
  cherry: 25,
  sour_cherry: 25,
  pomegranate: 25,
  quince: 40,
  apple: 40,
  persimmon: 50,
  fig: 50,
  pear: 60,
  walnut: 80,
}

/** Still in training. Common practice, no source. */
const youngYears = 5

export type FlaggedTree = {
  sign: string
  severity: 'low' | 'high' | 'danger_now'
  confirmed: boolean
}

type Standing = {
  trees: readonly Tree[]
  /** Of the trees in this order. */
  neighbours: Neighbours
  /** Open disease flags by number of the tree. */
  flags: ReadonlyMap<number, readonly FlaggedTree[]>
  year: number
}

/** The most reasons first. */
export function treesToReplace({ trees, neighbours, flags, year }: Standing): ToReplace[] {
  return trees
    .flatMap((tree, at): ToReplace[] => {
      if (tree.life === 'dead') return [{ no: tree.no, reasons: [{ code: 'dead' }] }]
      // What is only suspected is looked at first, not taken out.
      const bad = (flags.get(tree.no) ?? []).find(
        ({ severity, confirmed }) => severity !== 'low' && confirmed
      )
      if (!bad) return []
      const beside = [...neighboursAt(neighbours, at)].flatMap((other) => trees[other] ?? [])
      const young = beside.filter((other) => isYoung(other, year)).length
      const sick = beside.filter(({ no }) => flags.has(no)).length
      const old = ageReason(tree, year)
      if (!old && young === 0) return []
      return [
        {
          no: tree.no,
          reasons: [
            { code: 'badly_sick', sign: bad.sign },
            ...(old ? [old] : []),
            ...(young > 0 ? [{ code: 'beside_young', trees: young } as const] : []),
            ...(sick > 0 ? [{ code: 'sick_neighbours', trees: sick } as const] : []),
          ],
        },
      ]
    })
    .toSorted((a, b) => b.reasons.length - a.reasons.length || a.no - b.no)
}

/** Without a year nobody calls a tree old. */
function ageReason({ species, plantedYear }: Tree, year: number): ReplaceReason | null {
  const usual = usualYears[species]
  if (plantedYear === null || usual === undefined) return null
  const years = year - plantedYear
  return years >= usual ? { code: 'old', years, usualYears: usual } : null
}

function isYoung({ life, plantedYear, sizeClass }: Tree, year: number): boolean {
  if (life !== 'standing') return false
  return plantedYear === null ? sizeClass === 'young' : year - plantedYear <= youngYears
}
