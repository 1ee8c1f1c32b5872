/** A measure as it is typed, in the orchard's units. Inside it is SI. */

export type Units = 'metric' | 'us'
export type MeasureUnit = 'cm' | 'in' | 'm' | 'ft' | '°'

/** What can be measured, in its SI unit. */
export type Measure = { unit: 'cm' | 'm' | '°'; least: number; most: number }

export const measures = {
  limbCm: { unit: 'cm', least: 0.5, most: 200 },
  trunkCm: { unit: 'cm', least: 5, most: 300 },
  soundCm: { unit: 'cm', least: 0, most: 150 },
  toLineM: { unit: 'm', least: 0, most: 200 },
  reachM: { unit: 'm', least: 0, most: 20 },
  limbM: { unit: 'm', least: 0.1, most: 20 },
  bearing: { unit: '°', least: 0, most: 360 },
  angle: { unit: '°', least: 0, most: 90 },
  limbEndCm: { unit: 'cm', least: 0, most: 200 },
} as const satisfies Record<string, Measure>

const inUs = { cm: { unit: 'in', per: 2.54 }, m: { unit: 'ft', per: 0.3048 } } as const

export function unitOf({ unit }: Measure, units: Units): { unit: MeasureUnit; per: number } {
  return units === 'us' && unit !== '°' ? inUs[unit] : { unit, per: 1 }
}

/** Null: nothing is typed. */
export function measured(measure: Measure, typed: string, units: Units): number | 'wrong' | null {
  const text = typed.trim().replace(',', '.')
  if (text === '') return null
  const value = Number(text) * unitOf(measure, units).per
  const isRight = value >= measure.least - tiny && value <= measure.most + tiny
  return isRight ? Math.min(measure.most, Math.max(measure.least, value)) : 'wrong'
}

/** A wrong number counts as nobody having measured. */
export function measuredOrNull(measure: Measure, typed: string, units: Units): number | null {
  const value = measured(measure, typed, units)
  return value === 'wrong' ? null : value
}

/** The ends of the range as they are typed: inside it, never beyond. */
export function rangeOf(measure: Measure, units: Units): [least: number, most: number] {
  const { per } = unitOf(measure, units)
  return [
    Math.ceil((measure.least / per) * 10 - tiny) / 10,
    Math.floor((measure.most / per) * 10 + tiny) / 10,
  ]
}

const tiny = 1e-6
