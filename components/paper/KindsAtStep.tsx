'use client'

import type { KindToPrune } from '@/lib/domain/pruning/kinds'
import type { StepCode } from '@/lib/domain/pruning/work-card'
import type { Messages } from '@/lib/text/messages'
import { capitalised, speciesWords } from '@/lib/text/species'
import { groupBy } from '@/lib/util/group-by'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { stepWords } from '../tree/step-words'

type KindsAtStepProps = { kinds: readonly KindToPrune[]; codes: readonly StepCode[] }

/** How much may go in a year, with the species of each limit. */
export function LimitsOfKinds({ kinds }: { kinds: readonly KindToPrune[] }) {
  const words = useWords()
  const format = useFormat()
  const limits = groupBy(kinds, ({ card: { limit } }) =>
    words.whatToCut.limit[limit.of](format.share(limit.value))
  )
  return [...limits].map(([says, own]) => (
    <span key={says}>
      <b>{capitalised(format.list(manyOf(words, own)))}.</b> {says}
    </span>
  ))
}

function manyOf(words: Messages, of: readonly { species: string }[]): string[] {
  return [...new Set(of.map(({ species }) => speciesWords(words, species).many))]
}

/** A step that is done one way in these species and another way in those: each way once, with its species. An item of the order. */
export function KindsAtStep({ kinds, codes }: KindsAtStepProps) {
  const words = useWords()
  const format = useFormat()
  const said = kinds.flatMap(({ species, card }) => {
    const step = card.steps.find(({ code }) => codes.includes(code))
    return step ? [{ species, ...stepWords(words, format, step) }] : []
  })
  const ways = groupBy(said, (way) => `${way.title} ${way.do[0]}`)
  if (ways.size === 0) return null
  const lines = [...ways].map(([key, own]) => {
    const [way] = own
    return (
      way && (
        <span key={key} className="paper-way">
          <b>{way.title}</b> ({format.list(manyOf(words, own))}). {way.do[0]}{' '}
          <b>{words.whatToCut.never}:</b> {way.never}
        </span>
      )
    )
  })
  return <li>{lines}</li>
}
