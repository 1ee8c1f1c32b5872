/**
 * Ours, or the licensed arborist's. Any one reason is enough, and what nobody looked at is a reason too:
 * "not measured" never counts as harmless. Nothing here says that a tree is without danger.
 */

import type { ReferCode, ReferRule } from './refer-rules'

/** Seen, looked at and not there, could not be told, or measured in the unit of the rule. */
export type Answer = 'yes' | 'no' | 'not_known' | number
export type Answers = Partial<Record<ReferCode, Answer>>

export type Reason = {
  code: ReferCode
  /** False: nobody knows, and so it is referred. */
  seen: boolean
  /** What was measured, and what the rule allows, in the rule's unit. */
  value: number | null
  limit: number | null
}

export type Decision = { outcome: 'ours' | 'refer'; reasons: Reason[] }

export function decide(answers: Answers, rules: readonly ReferRule[]): Decision {
  const found = rules.flatMap((rule) => reasonOf(rule, answers[rule.code]) ?? [])
  const reasons = strictestOf(found)
  // Without a rule nobody has looked at anything.
  return { outcome: rules.length > 0 && reasons.length === 0 ? 'ours' : 'refer', reasons }
}

/** What to tell the arborist: what was seen; where nothing was, what nobody knows. */
export function worthTelling({ reasons }: Decision): Reason[] {
  const seen = reasons.filter((reason) => reason.seen)
  return seen.length > 0 ? seen : reasons
}

function reasonOf({ code, limit }: ReferRule, answer: Answer | undefined): Reason | null {
  const bound = 'value' in limit ? limit.value : null
  const reason = (seen: boolean, value: number | null): Reason => ({
    code,
    seen,
    value,
    limit: bound,
  })
  if (answer === 'no') return null
  if (answer === 'yes') return reason(true, null)
  if (typeof answer !== 'number' || !Number.isFinite(answer) || answer < 0)
    return reason(false, null)
  switch (limit.kind) {
    case 'seen':
      return reason(true, answer)
    case 'most':
      return answer > limit.value ? reason(true, answer) : null
    case 'least':
      return answer < limit.value ? reason(true, answer) : null
    case 'never_enough':
      return reason(false, answer)
  }
}

/** Two rules about the same thing give one reason; rules stand from the milder to the stricter. */
function strictestOf(reasons: readonly Reason[]): Reason[] {
  return [...new Map(reasons.map((reason) => [reason.code, reason])).values()]
}

/** Of a hollow trunk: the sound wood around the hole as a share of the trunk's radius. */
export function shellShare(trunkCm: number, soundCm: number): number {
  return soundCm / (trunkCm / 2)
}

/** How far a trunk of so much lean is aside at a height, in the unit of the height. */
export function asideOf(leanDeg: number, height: number): number {
  return Math.tan((leanDeg * Math.PI) / 180) * height
}

/** How far a trunk is out of plumb, from how far it is aside at a height. */
export function leanDegrees(asideM: number, heightM: number): number {
  return (Math.atan2(asideM, heightM) * 180) / Math.PI
}
