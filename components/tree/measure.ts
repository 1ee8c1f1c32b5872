/** A measure as it is typed, in the orchard's units. Inside it is SI. */

export type Units = 'metric' | 'us'
export type MeasureUnit = 'cm' | 'in' | 'm' | 'ft' | '°'

/** What can be measured, in its SI unit; and what may be typed in inches or feet, in round numbers of these. */
export type Measure = { unit: 'cm' | 'm'; least: number; most: number; us: Ends } | Angle
type Ends = readonly [least: number, most: number]
type Angle = { unit: '°'; least: number; most: number }

export const measures = {
  limbCm: { unit: 'cm', least: 0.5, most: 200, us: [0.2, 78] },
  trunkCm: { unit: 'cm', least: 5, most: 300, us: [2, 118] },
  soundCm: { unit: 'cm', least: 0, most: 150, us: [0, 59] },
  toLineM: { unit: 'm', least: 0, most: 200, us: [0, 650] },
  reachM: { unit: 'm', least: 0, most: 20, us: [0, 65] },
  limbM: { unit: 'm', least: 0.1, most: 20, us: [0.5, 65] },
  bearing: { unit: '°', least: 0, most: 360 },
  angle: { unit: '°', least: 0, most: 90 },
  limbEndCm: { unit: 'cm', least: 0, most: 200, us: [0, 78] },
} as const satisfies Record<string, Measure>

const inUs = { cm: { unit: 'in', per: 2.54 }, m: { unit: 'ft', per: 0.3048 } } as const

export function unitOf({ unit }: Measure, units: Units): { unit: MeasureUnit; per: number } {
  return units === 'us' && unit !== '°' ? inUs[unit] : { unit, per: 1 }
}

/** Null: nothing is typed. */
export function measured(measure: Measure, typed: string, units: Units): number | 'wrong' | null {
  if (typed.trim() === '') return null
  const number = numberTyped(typed)
  const [least, most] = rangeOf(measure, units)
  const isRight = number >= least && number <= most
  // Free of the tail of a binary fraction.
  return isRight ? Number((number * unitOf(measure, units).per).toFixed(6)) : 'wrong'
}

/** A wrong number counts as nobody having measured. */
export function measuredOrNull(measure: Measure, typed: string, units: Units): number | null {
  const value = measured(measure, typed, units)
  return value === 'wrong' ? null : value
}

/** The ends of the range as they are typed. */
export function rangeOf(measure: Measure, units: Units): Ends {
  return units === 'us' && 'us' in measure ? measure.us : [measure.least, measure.most]
}

/** With a decimal point or comma, or as a tape is read: 3 7/8. */
export function numberTyped(typed: string): number {
  const text = typed.trim().replace(',', '.')
  const [, whole = '0', over, under] = /^(?:(\d+)\s+)?(\d+)\/(\d+)$/.exec(text) ?? []
  return under === undefined ? Number(text) : Number(whole) + Number(over) / Number(under)
}
