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
import { useSelect } from '@/lib/hooks'
import type { Format } from '@/lib/text/format'
import type { Messages } from '@/lib/text/messages'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'

export const sides = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'] as const

/** Of this app or, in a flag, of a newer one. */
export type AnyReason = Pick<ReferReason, 'code' | 'seen' | 'value' | 'limit'>

export function useReasonWords(): (reasons: readonly AnyReason[]) => string[] {
  const { ours } = useWords()
  const reader = useReader()
  return (reasons) => reasonLines(ours, reader, reasons)
}

export function useLimbWords(): (limb: FlaggedLimb | null) => string | null {
  const { ours } = useWords()
  const reader = useReader()
  return (limb) => limbWords(ours, reader, limb)
}

function useReader(): Reader {
  const format = useFormat()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  return { format, units }
}

type Reader = { format: Format; units: 'metric' | 'us' }

/** What was seen, a line each; what nobody could tell, in one. */
export function reasonLines(
  text: Messages['ours'],
  reader: Reader,
  reasons: readonly AnyReason[]
): string[] {
  const unknown = reasons.filter(({ seen }) => !seen)
  return [
    ...reasons.filter(({ seen }) => seen).map((reason) => seenWords(text, reader, reason)),
    ...(unknown.length > 0
      ? [
          text.notKnown(
            reader.format.list(unknown.map(({ code }) => (isKnown(code) ? text.asked[code] : code)))
          ),
        ]
      : []),
  ]
}

function seenWords(text: Messages['ours'], reader: Reader, reason: AnyReason): string {
  const { code, value, limit } = reason
  if (!isKnown(code)) return code.replaceAll('_', ' ')
  const name = text.reasons[code]
  if (value === null) return name
  const found = inUnit(code, value, reader, 'up')
  return limit === null
    ? `${name}: ${found}`
    : text.measuredOf(name, found, inUnit(code, limit, reader, 'down'))
}

function isKnown(code: string): code is ReferCode {
  return referCodes.some((known) => known === code)
}

/** To the cautious side: what was measured up, what is allowed down; the other way where more is better. */
function inUnit(code: ReferCode, value: number, reader: Reader, way: 'up' | 'down'): string {
  const { format, units } = reader
  const isUs = units === 'us'
  const rounded = (number: number) => {
    const round = (way === 'up') === (code !== 'line_near') ? Math.ceil : Math.floor
    return format.number(round(Number((number * 10).toFixed(6))) / 10, 1)
  }
  switch (code) {
    case 'line_near':
    case 'too_high': {
      const metres = code === 'too_high' ? value / 100 : value
      return isUs ? `${rounded(metres / 0.3048)} ft` : `${rounded(metres)} m`
    }
    case 'limb_thick':
    case 'dead_limb':
      return isUs ? `${rounded(value / 2.54)} in` : `${rounded(value)} cm`
    case 'leaning_far':
      return `${rounded(value)}°`
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
  return referRules({ limbCm: limit ?? 0, lineKv }).filter((rule) => rule.code === code)
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
  reader: Reader,
  limb: FlaggedLimb | null
): string | null {
  if (!limb) return null
  const side = limb.bearingDeg === null ? undefined : sides[Math.round(limb.bearingDeg / 45) % 8]
  const parts = [
    limb.cm !== null && text.limbAcross(inUnit('limb_thick', limb.cm, reader, 'up')),
    side && text.limbOn(text.sides[side]),
  ]
  return parts.filter(Boolean).join(', ') || null
}
