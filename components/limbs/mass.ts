/** Weights as they are read. */

import type { Units } from '../tree/measure'

const kgPerLb = 0.45359237

/** What something weighs: whole, rounded up, to the heavy side. */
export function heavySide(kg: number, units: Units): string {
  return units === 'us' ? `${Math.ceil(near(kg / kgPerLb))} lb` : `${Math.ceil(near(kg))} kg`
}

/** What may be lifted: whole, rounded down. */
export function lightSide(kg: number, units: Units): string {
  return units === 'us' ? `${Math.floor(near(kg / kgPerLb))} lb` : `${Math.floor(near(kg))} kg`
}

/** Of a cubic metre or a cubic foot. */
export function density(kgM3: number, units: Units): string {
  const perFoot = (kgM3 * 0.3048 ** 3) / kgPerLb
  return units === 'us' ? `${Math.ceil(near(perFoot))} lb/ft³` : `${Math.ceil(near(kgM3))} kg/m³`
}

/** What is exact stays, although it is no binary fraction. */
function near(value: number): number {
  return Number(value.toFixed(6))
}
