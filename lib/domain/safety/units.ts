/** Units in which the rules of weather are published; everything of ours is °C and km/h. */

export function fahrenheitOf(celsius: number): number {
  return celsius * 1.8 + 32
}

export function celsiusOf(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8
}

const kmPerMile = 1.609344

export function mphOf(kmPerH: number): number {
  return kmPerH / kmPerMile
}

export function kmPerHOf(mph: number): number {
  return mph * kmPerMile
}

/** As a limit is compared: what was typed as 80 °F is kept in °C and must be 80 again. */
export function toTenth(value: number): number {
  return Math.round(value * 10) / 10
}
