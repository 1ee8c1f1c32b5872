/** A limb that is weighed, as it is typed. */

import type { Hold, Take } from '@/lib/domain/pruning/carry-limb'
import type { LimbShape, SideBranches } from '@/lib/domain/pruning/limb-weight'
import { measuredOrNull, measures, type Units } from '../tree/measure'

export type WeighDraft = {
  thick: string
  thin: string
  length: string
  branches: SideBranches
  hold: Hold
  take: Take
}

/** The heavier of each until somebody says otherwise. */
export const noWeigh: WeighDraft = {
  thick: '',
  thin: '',
  length: '',
  branches: 'leafy',
  hold: 'at_arms_length',
  take: 'off_the_tree',
}

/** Null: something is missing or cannot be. Without an outer end it is as thick all along, the heavy case. */
export function shapeOf(draft: WeighDraft, units: Units): LimbShape | null {
  const thickCm = measuredOrNull(measures.limbCm, draft.thick, units)
  const lengthM = measuredOrNull(measures.limbM, draft.length, units)
  if (thickCm === null || lengthM === null) return null
  const thinCm = measuredOrNull(measures.limbEndCm, draft.thin, units) ?? thickCm
  return { thickCm, thinCm, lengthM, branches: draft.branches }
}
