/**
 * Numbers, units and times as they are read. Everything inside is SI and UTC; only here do they
 * become feet, inches and the orchard's clock.
 */

import type { Language } from './language'
import { ordinal } from './ordinal'
import { feetAndInches, fractionOf, type Rounding } from './us-lengths'

export type Units = 'metric' | 'us'

export type Format = ReturnType<typeof formatFor>

const metresPerPace = 0.75
const metresPerFoot = 0.3048
const centimetresPerInch = 2.54
const kmPerMile = 1.609344

/** The formats of one reader: their language, the orchard's units and its time zone. */
export function formatFor(reader: { language: Language; units: Units; timeZone: string }) {
  const { language, units, timeZone } = reader
  const isUs = units === 'us'
  const number = (value: number, digits = 0) => numberIn(language, value, digits)
  const inches = (centimetres: number, parts: number, rounding: Rounding) =>
    `${fractionOf(centimetres / centimetresPerInch, parts, rounding)} in`
  const shortNumber = (value: number, digitBelow: number, rounding: Rounding) => {
    const digits = value < digitBelow ? 1 : 0
    return number(roundedTo(value, digits, rounding), digits)
  }
  const time = new Intl.DateTimeFormat(language, {
    timeZone,
    hour: 'numeric',
    minute: '2-digit',
    ...(isUs && language === 'en' ? { hour12: true } : { hourCycle: 'h23' }),
  })
  const day = new Intl.DateTimeFormat(language, { timeZone, weekday: 'long' })
  const date = new Intl.DateTimeFormat(language, { timeZone, day: 'numeric', month: 'long' })
  const month = new Intl.DateTimeFormat(language, { timeZone: 'UTC', month: 'long' })
  const fullDate = new Intl.DateTimeFormat(language, { timeZone, dateStyle: 'long' })
  const list = new Intl.ListFormat(language, { type: 'conjunction' })

  return {
    number,
    /** A number as it stands in a field: with the decimal mark of the language. */
    inField: (plain: string) => plain.replace('.', number(0.5, 1).charAt(1)),
    ordinal: (place: number) => ordinal(language, place),
    list: (things: readonly string[]) => list.format(things),

    /** How far to walk: 46 m, 151 ft. */
    distance: (metres: number) =>
      isUs ? `${number(metres / metresPerFoot)} ft` : `${number(metres)} m`,
    /** How far to stay away, rounded up, to the safe side. */
    keepAway: (metres: number) =>
      isUs ? `${number(Math.ceil(metres / metresPerFoot))} ft` : `${number(Math.ceil(metres))} m`,
    /** A height: one digit, since half a metre matters on a ladder. */
    height: (metres: number) =>
      isUs ? `${number(metres / metresPerFoot, 1)} ft` : `${number(metres, 1)} m`,
    /** Of the air: 12 °C, 54 °F. */
    temperature: (celsius: number) =>
      isUs ? `${number(celsius * 1.8 + 32)} °F` : `${number(celsius)} °C`,
    /** What it feels like in heat, rounded up, to the safe side. */
    feltHeat: (celsius: number) =>
      isUs ? `${number(up(celsius * 1.8 + 32))} °F` : `${number(up(celsius))} °C`,
    /** Of wind, rounded up; a limit is rounded down. */
    speed: (kmPerH: number) =>
      isUs ? `${number(up(kmPerH / kmPerMile))} mph` : `${number(up(kmPerH))} km/h`,
    speedLimit: (kmPerH: number) =>
      isUs ? `${number(Math.floor(kmPerH / kmPerMile))} mph` : `${number(kmPerH)} km/h`,
    heatLimit: (celsius: number) =>
      isUs ? `${number(Math.floor(celsius * 1.8 + 32))} °F` : `${number(celsius)} °C`,
    /** Of water to have at hand, in whole quarts. */
    water: (quarts: number) =>
      isUs
        ? `${number(quarts)} qt (${number(quarts / 4, 1)} gal)`
        : `${number(up(quarts * 0.946))} l`,
    /** How far something reaches: 4.1 m, 10 ft 8 in; the caller rounds to the safe side. */
    reach: (metres: number, rounding: Rounding) =>
      isUs
        ? feetAndInches((metres * 100) / centimetresPerInch, rounding)
        : `${number(roundedTo(metres, 1, rounding), 1)} m`,
    /** Thickness of wood: 10 cm, 3 7/8 in. A limit is rounded down, to the safe side. */
    diameter: (centimetres: number, rounding: Rounding = 'down') =>
      isUs
        ? inches(centimetres, 8, rounding)
        : `${number(roundedTo(centimetres, 1, rounding), 1)} cm`,
    /** How thick somebody says a branch is: 1.5 cm, 3/4 in. */
    thickness: (centimetres: number) =>
      isUs ? inches(centimetres, 8, 'near') : `${number(centimetres, 1)} cm`,
    /** Along wood: 41 cm, 16 in. Finer below 10 cm or 12 in; the caller rounds to the safe side. */
    span: (centimetres: number, rounding: Rounding = 'near') =>
      isUs
        ? inches(centimetres, centimetres / centimetresPerInch < 12 ? 4 : 1, rounding)
        : `${shortNumber(centimetres, 10, rounding)} cm`,
    /** Whole steps of 0.75 m; never none, for nobody stands in the tree. */
    paces: (metres: number) => Math.max(1, Math.round(metres / metresPerPace)),
    share: (part: number) => percentIn(language, part),

    /** "10:42" on the orchard's clock. */
    // English pads the hour of a 24-hour clock; on the radio one says nine, not zero nine.
    clock: (at: Date) => time.format(at).replace(/^0(?=\d)/, ''),
    /** "Saturday" */
    day: (at: Date) => day.format(at),
    /** "24 February", "February 24" */
    date: (at: Date) => date.format(at),
    /** "November"; 1 to 12. */
    month: (of: number) => month.format(new Date(Date.UTC(2026, of - 1, 1))),
    /** "24 November 2026": on paper, which is read next year. */
    fullDate: (at: Date) => fullDate.format(at),
    /** "20 s", "1 min 20 s": how long somebody waits, in steps of five seconds. */
    waiting: (ms: number) => waitingOf(Math.floor(ms / 5_000) * 5),
    /** 48 min, 1 h 5 min. */
    duration: (minutes: number) => durationOf(Math.max(0, Math.round(minutes))),
  }
}

/** Up, but not for what is only the tail of a binary fraction or of another unit. */
function up(value: number): number {
  return Math.ceil(Number(value.toFixed(1)))
}

function numberIn(language: Language, value: number, digits: number): string {
  // A figure that rounds to nothing would otherwise read "-0".
  const rounded = Number(value.toFixed(digits)) + 0
  return new Intl.NumberFormat(language, { maximumFractionDigits: digits }).format(rounded)
}

function roundedTo(value: number, digits: number, rounding: Rounding): number {
  const parts = 10 ** digits
  const round = { up: Math.ceil, near: Math.round, down: Math.floor }[rounding]
  // What is exact stays, although it is no binary fraction.
  return round(Number((value * parts).toFixed(6))) / parts
}

function percentIn(language: Language, part: number): string {
  return new Intl.NumberFormat(language, { style: 'percent' }).format(part)
}

function waitingOf(seconds: number): string {
  if (seconds < 60) return `${seconds} s`
  const minutes = Math.floor(seconds / 60)
  return minutes < 10 ? `${minutes} min ${seconds % 60} s` : durationOf(minutes)
}

function durationOf(minutes: number): string {
  if (minutes < 60) return `${minutes} min`
  const rest = minutes % 60
  const hours = `${Math.floor(minutes / 60)} h`
  return rest === 0 ? hours : `${hours} ${rest} min`
}
