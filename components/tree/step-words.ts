/** A step of the work in words: what stands in the catalogue, with this tree's own numbers. */

import type { Origin } from '@/lib/domain/pruning/fact'
import { longTipShootCm } from '@/lib/domain/pruning/last-years-wood'
import type { WorkStep } from '@/lib/domain/pruning/work-card'
import type { Format } from '@/lib/text/format'
import type { Messages } from '@/lib/text/messages'

export type StepWords = {
  title: string
  look: string
  /** Sentences, one a line. */
  do: string[]
  never: string
  why: string
  done: string
  picture: string
}

/** Kept shoots of a peach, 12 to 24 inches: general garden references, second hand. */
const keptShootsCm = { shortest: 12 * 2.54, longest: 24 * 2.54 }

export function stepWords(
  { whatToCut: text }: Pick<Messages, 'whatToCut'>,
  format: Format,
  step: WorkStep
): StepWords {
  switch (step.code) {
    case 'last_years_wood':
      return withLines(
        { ...text.steps.last_years_wood, ...text.shoots[step.what] },
        ...shootLines(text, format, step)
      )
    case 'renew_spurs':
      return withLines(
        {
          ...text.steps.renew_spurs,
          look: text.steps.renew_spurs.look[step.spurs],
          do: text.steps.renew_spurs.do[step.spurs],
        },
        text.share.renew_spurs(shareRange(text, format, step.share))
      )
    case 'renew_shoots':
      return withLines(
        text.steps.renew_shoots,
        text.share.renew_shoots(
          shareRange(text, format, step.share),
          format.span(keptShootsCm.shortest, 'down'),
          format.span(keptShootsCm.longest, 'down')
        )
      )
    default:
      return withLines(text.steps[step.code])
  }
}

/** Of how many shoots, and of which. */
function shootLines(
  text: Messages['whatToCut'],
  format: Format,
  { what, usual }: Extract<WorkStep, { code: 'last_years_wood' }>
): string[] {
  if (what === 'leave_short') return [text.longTip(format.span(longTipShootCm, 'up'))]
  if (usual === null) return []
  return [
    usual === 'light' ? text.share.fewShoots : text.share.shoots(shareRange(text, format, usual)),
  ]
}

function withLines(words: Omit<StepWords, 'do'> & { do: string }, ...more: string[]): StepWords {
  return { ...words, do: [words.do, ...more] }
}

/** "10 % to 20 %", or one number where both ends are the same. */
export function shareRange(
  { share }: Messages['whatToCut'],
  format: Format,
  { least, most }: { least: number; most: number }
): string {
  const [from, to] = [format.share(least), format.share(most)]
  return from === to ? share.one(to) : share.range(from, to)
}

/** Where a fact comes from and how far it may be trusted. */
export function originWords(
  { whatToCut: { from }, tradeSources }: Pick<Messages, 'whatToCut' | 'tradeSources'>,
  origin: Origin
): string {
  if (origin.source === null) return from[origin.trust]
  const name = tradeSources[origin.source]
  return origin.trust === 'read' ? name : from.second_hand(name)
}
