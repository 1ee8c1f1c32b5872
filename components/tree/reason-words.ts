'use client'

/** Reasons in words, with what was measured and where the rule comes from. */

import {
  type ReferCode,
  type ReferRule,
  referCodes,
  referRules,
} from '@/lib/domain/safety/refer-rules'
import type { Source } from '@/lib/domain/safety/source'
import type { FlaggedLimb, ReferReason } from '@/lib/events/state'
import type { Format } from '@/lib/text/format'
import type { Messages } from '@/lib/text/messages'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'

export const sides = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const

/** Of this app or, in a flag, of a newer one. */
export type AnyReason = Pick<ReferReason, 'code' | 'seen' | 'value' | 'limit'>

export function useReasonWords(): (reasons: readonly AnyReason[]) => string[] {
  const { ours } = useWords()
  const format = useFormat()
  return (reasons) => reasonLines(ours, format, reasons)
}

export function useLimbWords(): (limb: FlaggedLimb | null) => string | null {
  const { ours } = useWords()
  const format = useFormat()
  return (limb) => limbWords(ours, format, limb)
}

/** What was seen, a line each; what nobody could tell, in one. */
export function reasonLines(
  text: Messages['ours'],
  format: Format,
  reasons: readonly AnyReason[]
): string[] {
  const unknown = reasons.filter(({ seen }) => !seen)
  return [
    ...reasons.filter(({ seen }) => seen).map((reason) => seenWords(text, format, reason)),
    ...(unknown.length > 0
      ? [
          text.notKnown(
            format.list(unknown.map(({ code }) => (isKnown(code) ? text.asked[code] : code)))
          ),
        ]
      : []),
  ]
}

function seenWords(text: Messages['ours'], format: Format, reason: AnyReason): string {
  const { code, value, limit } = reason
  if (!isKnown(code)) return code.replaceAll('_', ' ')
  const name = text.reasons[code]
  if (value === null) return name
  const found = inUnit(code, value, format, 'up')
  return limit === null
    ? `${name}: ${found}`
    : text.measuredOf(name, found, inUnit(code, limit, format, 'down'))
}

function isKnown(code: string): code is ReferCode {
  return referCodes.some((known) => known === code)
}

/** To the cautious side: what was measured up, what is allowed down; the other way where more is better. */
function inUnit(code: ReferCode, value: number, format: Format, way: 'up' | 'down'): string {
  switch (code) {
    case 'line_near':
      return format.reach(value, way === 'up' ? 'down' : 'up')
    case 'too_high':
      return format.reach(value / 100, way)
    case 'limb_thick':
    case 'dead_limb':
      return format.diameter(value, way)
    case 'leaning_far':
      return `${format.number(way === 'up' ? Math.ceil(value) : Math.floor(value))}°`
    default:
      return format.share(value)
  }
}

export function useSourceWords(): (reasons: readonly AnyReason[]) => string[] {
  const { ours } = useWords()
  return (reasons) =>
    reasons.flatMap((reason) => {
      if (!isKnown(reason.code)) return []
      const name = ours.reasons[reason.code]
      return rulesBehind(reason).map((rule) => `${name}: ${sourceWords(ours, rule)}`)
    })
}

function rulesBehind({ code, value, limit }: AnyReason) {
  // A line whose voltage was known has a limit.
  const lineKv = code === 'line_near' && (value === null || limit !== null) ? 50 : null
  return referRules({ limbCm: 0, feetCm: 0, leanDeg: 0, lineKv }).filter(
    (rule) => rule.code === code
  )
}

function sourceWords(text: Messages['ours'], { source, mark }: ReferRule): string {
  const name = sourceName(text, source)
  const howSure = text.marks[mark]
  return name === howSure ? name : `${name} (${howSure})`
}

function sourceName(text: Messages['ours'], source: Source): string {
  switch (source.kind) {
    case 'published':
      return source.name
    case 'common_practice':
      return text.commonPractice
    case 'house_rule':
      return text.houseRule
  }
}

/** "14 cm across, on the north side"; null: nobody said. */
export function limbWords(
  text: Messages['ours'],
  format: Format,
  limb: FlaggedLimb | null
): string | null {
  if (!limb) return null
  const side = limb.bearingDeg === null ? undefined : sides[Math.round(limb.bearingDeg / 45) % 8]
  const parts = [
    limb.cm !== null && text.limbAcross(inUnit('limb_thick', limb.cm, format, 'up')),
    side && text.limbOn(text.sides[side]),
  ]
  return parts.filter(Boolean).join(', ') || null
}
