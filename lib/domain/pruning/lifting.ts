/**
 * The revised NIOSH lifting equation: Applications Manual, DHHS (NIOSH) 94-110, revised 2021, in its metric form.
 * For two hands, a steady load and feet on firm ground; it covers neither lifting with one hand nor ladders.
 */

export type Grip = 'good' | 'fair' | 'poor'

export type Lift = {
  /** From the middle of the ankles to the hands. */
  reachCm: number
  /** Hands above the ground where the load is taken. */
  handsCm: number
  /** How far it goes up or down. */
  travelCm: number
  twistDeg: number
  grip: Grip
}

const loadConstantKg = 23

/** Asymmetry, frequency and grip are from memory. One lift a minute for an hour at most. */
const oncePerMinute = 0.94

export type Multipliers = {
  reach: number
  hands: number
  travel: number
  twist: number
  often: number
  grip: number
}

export function multipliersOf({ reachCm, handsCm, travelCm, twistDeg, grip }: Lift): Multipliers {
  return {
    reach: reachCm > 63 ? 0 : 25 / Math.max(25, reachCm),
    hands: handsCm > 175 ? 0 : 1 - 0.003 * Math.abs(handsCm - 75),
    travel: travelCm > 175 ? 0 : 0.82 + 4.5 / Math.max(25, travelCm),
    twist: twistDeg > 135 ? 0 : 1 - 0.0032 * twistDeg,
    often: oncePerMinute,
    grip: gripOf(grip, handsCm),
  }
}

/** The weight that nearly everybody may lift so, the recommended weight limit. */
export function recommendedKg(lift: Lift): number {
  const { reach, hands, travel, twist, often, grip } = multipliersOf(lift)
  return loadConstantKg * reach * hands * travel * twist * often * grip
}

function gripOf(grip: Grip, handsCm: number): number {
  if (grip === 'poor') return 0.9
  return grip === 'fair' && handsCm < 75 ? 0.95 : 1
}
