/**
 * Whether wood and leaves are wet. Wet from 90 % relative humidity on: Sentelhas and others, evaluated at Ames, Elora,
 * Florence and Piracicaba; NC State Climate Office has below 70 % as dry and between either.
 */

export const wetFromHumidity = 90

export type Hour = { humidity: number | null; rainMm: number | null }

/** Null: nothing is known of that hour. */
export function isWetHour({ humidity, rainMm }: Hour): boolean | null {
  if (rainMm !== null && rainMm > 0) return true
  return humidity === null ? null : humidity >= wetFromHumidity
}

/** Magnus, with 17.625 and 243.04 °C. Where wood is colder than this, it is wet. */
export function dewPointC(temperatureC: number, humidity: number): number {
  const gamma = Math.log(humidity / 100) + (17.625 * temperatureC) / (243.04 + temperatureC)
  return (243.04 * gamma) / (17.625 - gamma)
}
