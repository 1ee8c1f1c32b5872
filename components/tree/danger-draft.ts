/** What somebody ticked and typed about a danger, and what the rules make of it. */

import {
  answersOf,
  type Looked,
  nothingTold,
  type SeenSign,
  type Told,
  type TrunkSign,
  type UnderSign,
} from '@/lib/domain/safety/five-questions'
import { type Decision, decide } from '@/lib/domain/safety/ours-or-the-arborists'
import { type ReferSettings, referRules } from '@/lib/domain/safety/refer-rules'
import { measuredOrNull, measures, type Units } from './measure'

export type LineTyped = {
  /** Empty: nobody knows. */
  kv: string
  toTree: string
  ladder: string
  tool: string
  branch: string
}

export type DangerDraft = {
  seen: readonly SeenSign[]
  thickness: Told['thickness']
  limb: string
  height: Told['height']
  trunk: Looked<TrunkSign> | null
  hollow: { trunk: string; sound: string }
  under: Looked<UnderSign> | null
  line: LineTyped
  bearingDeg: number | null
}

export const noDanger: DangerDraft = {
  seen: [],
  thickness: null,
  limb: '',
  height: null,
  trunk: null,
  hollow: { trunk: '', sound: '' },
  under: null,
  line: { kv: '', toTree: '', ladder: '', tool: '', branch: '' },
  bearingDeg: null,
}

export type Circumstances = Omit<ReferSettings, 'lineKv'> & { units: Units }

export function decisionOf(danger: DangerDraft, here: Circumstances): Decision {
  const lineKv = danger.line.kv === '' ? null : Number(danger.line.kv)
  return decide(answersOf(toldOf(danger, here.units), here), referRules({ ...here, lineKv }))
}

function toldOf(danger: DangerDraft, units: Units): Told {
  const { seen, thickness, height, trunk, under } = danger
  return {
    ...nothingTold,
    seen,
    thickness,
    height,
    trunk,
    under,
    limbCm: measuredOrNull(measures.limbCm, danger.limb, units),
    hollow: hollowOf(danger, units),
    line: lineOf(danger, units),
  }
}

function hollowOf({ hollow }: DangerDraft, units: Units): Told['hollow'] {
  const trunkCm = measuredOrNull(measures.trunkCm, hollow.trunk, units)
  const soundCm = measuredOrNull(measures.soundCm, hollow.sound, units)
  return trunkCm === null || soundCm === null ? null : { trunkCm, soundCm }
}

/** The whole of it or nothing: a reach that nobody told is no reach of nothing. */
function lineOf({ line }: DangerDraft, units: Units): Told['line'] {
  const toTreeM = measuredOrNull(measures.toLineM, line.toTree, units)
  const [ladderM, toolM, branchM] = [line.ladder, line.tool, line.branch].map((typed) =>
    measuredOrNull(measures.reachM, typed, units)
  )
  return toTreeM == null || ladderM == null || toolM == null || branchM == null
    ? null
    : { toTreeM, ladderM, toolM, branchM }
}

/** Which of the questions after the pictures still waits for an answer, from 2 on; 6: none. */
export function nextQuestion({ thickness, limb, height, trunk, under }: DangerDraft): number {
  if (thickness === null && limb === '') return 2
  if (height === null) return 3
  if (trunk === null) return 4
  return under === null ? 5 : 6
}
