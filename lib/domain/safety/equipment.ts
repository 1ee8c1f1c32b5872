/** What each person wears, and looks at, before a tree. The words are in lib/text. */

import { commonPractice, published, type Source } from './source'

export const equipmentCodes = [
  'eye_protection',
  'gloves',
  'shoes',
  'long_sleeves',
  'helmet',
] as const
export type EquipmentCode = (typeof equipmentCodes)[number]

export type EquipmentItem = { code: EquipmentCode; source: Source }

/** Standards named from memory; eye protection Z87.1, helmets Z89.1. */
const items: readonly EquipmentItem[] = [
  { code: 'eye_protection', source: published('ANSI/ISEA Z87.1') },
  { code: 'gloves', source: commonPractice },
  { code: 'shoes', source: published('OSHA QuickCard, tripod orchard ladders') },
  { code: 'long_sleeves', source: commonPractice },
  { code: 'helmet', source: published('ANSI/ISEA Z89.1') },
]

/** A helmet is asked for as soon as anybody on the shift cuts above somebody's head. */
export function equipmentFor(shift: { cuttingOverhead: boolean }): EquipmentItem[] {
  return items.filter(({ code }) => code !== 'helmet' || shift.cuttingOverhead)
}
