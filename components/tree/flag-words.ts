/** What a sign is called; a code of a newer app is shown as it is. */

import { type SeenSign, seenSigns } from '@/lib/domain/safety/five-questions'
import type { Messages } from '@/lib/text/messages'

export const diseaseSigns = ['gum', 'canker', 'dead_twigs', 'spots', 'other'] as const
export type DiseaseSign = (typeof diseaseSigns)[number]

export type HazardSign = SeenSign
export const hazardSigns = seenSigns

export const flagPlaces = ['trunk', 'fork', 'limb', 'branch', 'shoots', 'roots'] as const
export type FlagPlace = (typeof flagPlaces)[number]

export function signWords({ flag }: Messages, kind: 'disease' | 'arborist', sign: string): string {
  const signs: Record<string, string> = kind === 'disease' ? flag.disease : flag.hazard
  const known = kind === 'disease' ? diseaseSigns : hazardSigns
  return known.some((one) => one === sign) ? (signs[sign] ?? sign) : sign.replaceAll('_', ' ')
}
