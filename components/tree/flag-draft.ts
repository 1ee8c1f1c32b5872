/** A flag half entered, and what is sent of it. */

import { signOf } from '@/lib/domain/safety/five-questions'
import { keepOutFor } from '@/lib/domain/safety/keep-out'
import { worthTelling } from '@/lib/domain/safety/ours-or-the-arborists'
import type { ArgsOf } from '@/lib/events/commands'
import { type Circumstances, type DangerDraft, decisionOf, noDanger } from './danger-draft'
import type { DiseaseSign, FlagPlace, HazardSign } from './flag-words'
import { measuredOrNull, measures } from './measure'

export type FlagDraft = {
  kind: 'disease' | 'arborist' | null
  disease: DiseaseSign | null
  danger: DangerDraft
  severity: 'low' | 'high'
  place: FlagPlace | null
  note: string
  /** Base64, small already. */
  photo: string | null
}

export const emptyFlag: FlagDraft = {
  kind: null,
  disease: null,
  danger: noDanger,
  severity: 'low',
  place: null,
  note: '',
  photo: null,
}

/** For who comes from a limb that looks high or thick. */
export const limbFlag: FlagDraft = {
  ...emptyFlag,
  kind: 'arborist',
  danger: { ...noDanger, seen: ['too_high_or_thick'] },
}

/** What may come down or kill where one stands. A volunteer is not asked to weigh it. */
const dangerNow: readonly HazardSign[] = ['hanging_limb', 'power_line']

export type AtTree = Circumstances & {
  /** What the work in hand already amounts to. */
  share: number | null
  heightCm: number | null
  /** How far around a hazard the ground is closed here. */
  houseM: number
}

/** Null: what one sees is not chosen yet. */
export function flagArgs(tree: number, flag: FlagDraft, at: AtTree): ArgsOf<'flag_tree'> | null {
  const { kind, danger } = flag
  if (kind === 'disease') return diseaseArgs(tree, flag)
  if (kind !== 'arborist' || danger.seen.length === 0) return null

  const reasons = worthTelling(decisionOf(danger, at))
  const keepOutM = keepOutFor(reasons, at)
  return {
    ...hazardArgs(tree, signOf(danger.seen), flag.note.trim() || null),
    part: flag.place,
    share: at.share,
    // The orchard's own distance is the referee's to know.
    keepOutM: keepOutM > at.houseM ? keepOutM : null,
    reasons,
    limb: limbOf(danger, at),
  }
}

type Disease = Pick<FlagDraft, 'severity' | 'place' | 'note'> & {
  disease: DiseaseSign | null | undefined
}

export function diseaseArgs(
  tree: number,
  { disease, severity, place, note }: Disease
): ArgsOf<'flag_tree'> | null {
  if (!disease) return null
  return {
    tree,
    kind: 'disease',
    sign: disease,
    severity,
    part: place,
    note: note.trim() || null,
  }
}

/** A hazard of which only the sign is known. */
export function hazardArgs(tree: number, sign: HazardSign, note: string | null) {
  const severity = dangerNow.includes(sign) ? 'danger_now' : 'high'
  return { tree, kind: 'arborist', sign, severity, note } as const
}

function limbOf({ limb, bearingDeg }: DangerDraft, { units }: Circumstances) {
  const cm = measuredOrNull(measures.limbCm, limb, units)
  return cm === null && bearingDeg === null ? null : { cm, bearingDeg }
}
