/**
 * How hot it feels, and how cold. The heat index is the equation of the National Weather Service (Weather
 * Prediction Center, "The Heat Index Equation"; Rothfusz 1990) with both adjustments. It is for shade and light
 * wind: full sun adds up to 15 °F, which screens say and nothing here adds.
 *
 * From when on the full equation is used is read in three ways. Ours is that of the service's own calculator: above
 * 79.0 °F of the simple one. Of the three it changes earliest, so that on a humid day it is never the lowest.
 */

import { celsiusOf, fahrenheitOf } from './units'

const fullEquationAboveF = 79
const noIndexBelowF = 40

/** What it feels like, °C. */
export function heatIndexC(temperatureC: number, humidity: number): number {
  return celsiusOf(heatIndexF(fahrenheitOf(temperatureC), humidity))
}

export function heatIndexF(t: number, rh: number): number {
  if (t < noIndexBelowF) return t
  const simple = 0.5 * (t + 61 + (t - 68) * 1.2 + rh * 0.094)
  return simple > fullEquationAboveF ? fullEquation(t, rh) + adjustment(t, rh) : simple
}

function fullEquation(t: number, rh: number): number {
  return (
    -42.379 +
    2.04901523 * t +
    10.14333127 * rh -
    0.22475541 * t * rh -
    0.00683783 * t * t -
    0.05481717 * rh * rh +
    0.00122874 * t * t * rh +
    0.00085282 * t * rh * rh -
    0.00000199 * t * t * rh * rh
  )
}

function adjustment(t: number, rh: number): number {
  if (rh <= 13 && t >= 80 && t <= 112) {
    return (-(13 - rh) / 4) * Math.sqrt((17 - Math.abs(t - 95)) / 17)
  }
  return rh > 85 && t >= 80 && t <= 87 ? ((rh - 85) / 10) * ((87 - t) / 5) : 0
}

const heatClasses = ['none', 'caution', 'extreme_caution', 'danger', 'extreme_danger'] as const
export type HeatClass = (typeof heatClasses)[number]

/**
 * The classes of the current chart of the National Weather Service. It prints 90 and 103 in two classes and
 * nothing between 124 and 125: each belongs to the graver one.
 */
export function heatClassOf(indexF: number): HeatClass {
  if (indexF > 124) return 'extreme_danger'
  if (indexF >= 103) return 'danger'
  if (indexF >= 90) return 'extreme_caution'
  return indexF >= 80 ? 'caution' : 'none'
}

/** Wind chill, °F and mph: National Weather Service, in force since 1 November 2001. Null where it is not defined. */
export function windChillF(t: number, mph: number): number | null {
  if (t > 50 || mph < 3) return null
  const wind = mph ** 0.16
  return 35.74 + 0.6215 * t - 35.75 * wind + 0.4275 * t * wind
}
