/** A flag half entered, and what is sent of it. */

import type { ArgsOf } from '@/lib/events/commands'
import type { DiseaseSign, FlagPlace, HazardSign } from './flag-words'

export type FlagDraft = {
  kind: 'disease' | 'arborist' | null
  disease: DiseaseSign | null
  hazard: HazardSign | null
  severity: 'low' | 'high'
  place: FlagPlace | null
  note: string
  /** Base64, small already. */
  photo: string | null
}

export const emptyFlag: FlagDraft = {
  kind: null,
  disease: null,
  hazard: null,
  severity: 'low',
  place: null,
  note: '',
  photo: null,
}

/** What may come down or kill where one stands. A volunteer is not asked to weigh it. */
const dangerNow: readonly HazardSign[] = ['hanging_limb', 'power_line']

/** Null: what one sees is not chosen yet. `share` is what the work in hand already amounts to. */
export function flagArgs(
  tree: number,
  { kind, disease, hazard, severity, place, note }: FlagDraft,
  share: number | null
): ArgsOf<'flag_tree'> | null {
  const written = note.trim() || null
  if (kind === 'disease' && disease)
    return { tree, kind, sign: disease, severity, part: place, note: written }
  if (kind === 'arborist' && hazard)
    return {
      tree,
      kind,
      sign: hazard,
      severity: dangerNow.includes(hazard) ? 'danger_now' : 'high',
      note: written,
      share,
    }
  return null
}
