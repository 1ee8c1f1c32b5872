/** Why a file cannot come in yet; null: it can. The first thing that has to be done. */

import { calledKey } from '@/lib/domain/orchard/inventory-reader'

import type { Said } from './bring-in-draft'
import type { Reading } from './reading'

export type Lacks = {
  code: 'whySpecies' | 'whyBlocks' | 'whyWrong' | 'whyNothing' | 'whyTick'
  count: number
}

export function whyNot(reading: Reading, ticked: number, { species }: Said): Lacks | null {
  const { strangeSpecies, newBlocks, wrongLines, isLeftOut, trees, changed } = reading
  if (strangeSpecies.some((word) => !species[calledKey(word)])) {
    return { code: 'whySpecies', count: 0 }
  }
  if (newBlocks.some(({ isCodeWrong, isPlaceWrong }) => isCodeWrong || isPlaceWrong)) {
    return { code: 'whyBlocks', count: 0 }
  }
  if (wrongLines.length > 0 && !isLeftOut) return { code: 'whyWrong', count: wrongLines.length }
  if (trees.length + ticked > 0) return null
  return { code: changed.length === 0 ? 'whyNothing' : 'whyTick', count: 0 }
}
