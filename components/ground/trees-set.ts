/** What is set for many trees at once, from what was typed and chosen. */

import type { ArgsOf } from '@/lib/events/commands'
import type { Units } from '@/lib/text/format'
import { typedLength, typedNumber } from './lengths'
import { said, toSet } from './typed'

export type TypedSet = {
  /** Empty: as it is. `unknown`: not known. */
  species: string
  cultivar: string
  size: string
  planted: string
  height: string
  trunk: string
  asksSaw: string
  life: string
}

export const nothingSet: TypedSet = {
  species: '',
  cultivar: '',
  size: '',
  planted: '',
  height: '',
  trunk: '',
  asksSaw: '',
  life: '',
}

export type TreesSet = ArgsOf<'change_trees'>['set']

/** The referee takes the same (supabase: private.is_change_of_trees). */
const heights = { least: 0.1, most: 50 }
const trunksMm = { least: 1, most: 9999 }
const mmPerInch = 25.4

/** Fields that say something they cannot. */
export function wrongIn(typed: TypedSet, units: Units): (keyof TypedSet)[] {
  const { planted, height, trunk } = numbersOf(typed, units)
  return [
    ...(planted.state === 'wrong' ? (['planted'] as const) : []),
    ...(height.state === 'wrong' ? (['height'] as const) : []),
    ...(trunk.state === 'wrong' ? (['trunk'] as const) : []),
  ]
}

export function setOf(typed: TypedSet, units: Units): TreesSet {
  const { planted, height, trunk } = numbersOf(typed, units)
  const heightM = toSet(height)
  return withoutUndefined({
    species: typed.species || undefined,
    cultivar: chosen(typed.cultivar, Number),
    size: chosen(typed.size, (size) => size as NonNullable<TreesSet['size']>),
    planted: toSet(planted),
    heightCm: typeof heightM === 'number' ? Math.round(heightM * 100) : heightM,
    trunkMm: toSet(trunk),
    asksSaw: typed.asksSaw === '' ? undefined : typed.asksSaw === 'yes',
    life: typed.life === '' ? undefined : (typed.life as NonNullable<TreesSet['life']>),
  })
}

function numbersOf(typed: TypedSet, units: Units) {
  return {
    planted: said(typed.planted, (text) => within(typedNumber(text), { least: 1700, most: 2200 })),
    height: said(typed.height, (text) => within(typedLength(text, units), heights, false)),
    trunk: said(typed.trunk, (text) => {
      const number = typedNumber(text)
      const mm = number === null ? null : number * (units === 'us' ? mmPerInch : 10)
      return within(mm === null ? null : Math.round(mm), trunksMm)
    }),
  }
}

function within(
  value: number | null,
  { least, most }: { least: number; most: number },
  isWhole = true
): number | null {
  if (value === null || value < least || value > most) return null
  return isWhole && !Number.isInteger(value) ? null : value
}

function chosen<Value>(typed: string, read: (typed: string) => Value): Value | null | undefined {
  if (typed === '') return undefined
  return typed === 'unknown' ? null : read(typed)
}

function withoutUndefined(set: Record<string, unknown>): TreesSet {
  return Object.fromEntries(Object.entries(set).filter(([, value]) => value !== undefined))
}
