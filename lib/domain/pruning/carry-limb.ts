/** Who takes a limb that comes off: one person, two, in pieces, or the arborist. For leads; feet on the ground. */

import type { Species } from '../orchard/types'
import { type Lift, recommendedKg } from './lifting'
import { type LimbShape, limbKg } from './limb-weight'

/** How a limb is held: it has no handles, and its branches keep it from the body. */
export const holds = {
  close: 30,
  at_arms_length: 60,
} as const
export type Hold = keyof typeof holds
export const takes = { off_the_tree: 140, from_the_ground: 0 } as const
export type Take = keyof typeof takes

/** The manual's own middle height, to which it is brought or from which it is let down. */
const middleCm = 75
/** Nobody stands quite square to a limb. Common practice. */
const twistDeg = 30

export function liftOf(hold: Hold, take: Take): Lift {
  const handsCm = takes[take]
  const travelCm = take === 'off_the_tree' ? handsCm : middleCm
  return { reachCm: holds[hold], handsCm, travelCm, twistDeg, grip: 'poor' }
}

/** 10 lb, a house rule: nothing published was found for one hand. */
export const oneHandKg = 4.5
/** Of what two can lift one by one, as much together. From memory (HSE L23): about two thirds. */
export const together = 2 / 3

export type Carried =
  | { by: 'one_hand' | 'one_person' | 'two_people' }
  /** How long each piece is, from the tip inwards. */
  | { by: 'in_pieces'; piecesM: number[] }
  | { by: 'refer'; why: 'thick' | 'too_many_pieces' }

export type CarryRule = {
  species: Species
  limitKg: number
  limbCm: number
  /** Pieces are as long as so many of these: what a tape shows. */
  gradeM: number
}

/** By the heavy end of its weight. */
export function carry(shape: LimbShape, rule: CarryRule): Carried {
  const { species, limitKg, limbCm } = rule
  if (shape.thickCm > limbCm) return { by: 'refer', why: 'thick' }
  const { most } = limbKg(shape, species)
  if (most <= Math.min(oneHandKg, limitKg)) return { by: 'one_hand' }
  if (most <= limitKg) return { by: 'one_person' }
  if (most <= 2 * together * limitKg) return { by: 'two_people' }
  const piecesM = piecesOf(shape, rule)
  return piecesM ? { by: 'in_pieces', piecesM } : { by: 'refer', why: 'too_many_pieces' }
}

export function limitOf(hold: Hold, take: Take): number {
  return recommendedKg(liftOf(hold, take))
}

/** More cuts than this, or shorter pieces, are no work for volunteers. Common practice. */
const mostPieces = 4
const shortestM = 0.3

/** From the tip inwards, each as long as it may weigh, down to the grade. Null: too many, or too short. */
function piecesOf(
  shape: LimbShape,
  { species, limitKg: eachKg, gradeM }: CarryRule
): number[] | null {
  const { thickCm, thinCm, lengthM } = shape
  const kgTo = (endM: number) => {
    const endCm = thinCm + ((thickCm - thinCm) * endM) / lengthM
    return limbKg({ ...shape, thickCm: endCm, lengthM: endM }, species).most
  }
  const pieces: number[] = []
  let fromM = 0
  while (kgTo(lengthM) - kgTo(fromM) > eachKg) {
    const toM = downTo(gradeM, furthest(kgTo, { fromM, lengthM, eachKg }))
    if (toM - fromM < shortestM - tiny || pieces.length + 1 >= mostPieces) return null
    pieces.push(toM - fromM)
    fromM = toM
  }
  return [...pieces, lengthM - fromM]
}

type Piece = { fromM: number; lengthM: number; eachKg: number }

/** Where a piece that starts at `fromM` is as heavy as it may be: halved until it is nearer than a millimetre. */
function furthest(kgTo: (endM: number) => number, { fromM, lengthM, eachKg }: Piece): number {
  let [light, heavy] = [fromM, lengthM]
  while (heavy - light > 0.001) {
    const middle = (light + heavy) / 2
    if (kgTo(middle) - kgTo(fromM) <= eachKg) light = middle
    else heavy = middle
  }
  return light
}

function downTo(grade: number, value: number): number {
  return Math.floor(value / grade + tiny) * grade
}

const tiny = 1e-9
