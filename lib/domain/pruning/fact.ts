/** Facts of the trade: each with where it was read and how far it may be trusted. */

/**
 * Read in the named source; read in a reprint or a general page; from memory; what the trade does,
 * without a paper to point to; or sources that do not agree.
 */
export type Trust = 'read' | 'second_hand' | 'from_memory' | 'practice' | 'not_confirmed'

export const tradeSources = [
  'ansi_a300',
  'apricot_reference',
  'garden_press',
  'garden_references',
  'master_gardener_column',
  'master_gardener_pages',
  'scottsdale',
  'uc_anr_8502',
  'uc_ipm_74109',
  'uc_ipm_apricot',
  'uc_ipm_cherry',
  'uc_ipm_wsu_fire_blight',
  'us_park_service',
  'wisconsin',
  'wsu_2025',
] as const
/** lib/text names each in the reader's language. */
export type TradeSource = (typeof tradeSources)[number]

export type Origin =
  | { source: TradeSource; trust: 'read' | 'second_hand' }
  | { source: null; trust: Exclude<Trust, 'read' | 'second_hand'> }
export type Fact<Value> = { value: Value } & Origin

/** A share of something, from 0 to 1. */
export type Range = { least: number; most: number }

export function read<Value>(value: Value, source: TradeSource): Fact<Value> {
  return { value, source, trust: 'read' }
}

export function secondHand<Value>(value: Value, source: TradeSource): Fact<Value> {
  return { value, source, trust: 'second_hand' }
}

export function fromMemory<Value>(value: Value): Fact<Value> {
  return { value, source: null, trust: 'from_memory' }
}

export function notConfirmed<Value>(value: Value): Fact<Value> {
  return { value, source: null, trust: 'not_confirmed' }
}

export function practice<Value>(value: Value): Fact<Value> {
  return { value, source: null, trust: 'practice' }
}
