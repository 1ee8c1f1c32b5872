'use client'

import { useSelect } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { usePatternWords } from './use-pattern-words'
import type { Surveyed } from './use-survey'

/** The answer as the headline; below it how much there is, and how far that can be trusted. */
export function Finding({ surveyed }: { surveyed: Surveyed }) {
  const { disease } = useLeadWords()
  const format = useFormat()
  const words = usePatternWords()
  const texts = useWords()
  const trees = useSelect((view) => view.ground.trees)
  const { found, isCounting, cases } = surveyed
  if (!found)
    return (
      <div className="disease-finding" role="status">
        <h1>{isCounting ? disease.counting : disease.headline.none}</h1>
      </div>
    )

  const { headline, caution } = words(found)
  const { incidence } = found
  const kinds = [...new Set(cases.flatMap(({ no }) => trees.get(no)?.species ?? []))]
  const confirmed = cases.filter((one) => one.confirmed).length
  const share = (part: number) => format.share(Math.round(part * 100) / 100)
  return (
    <div className="disease-finding" role="status" aria-busy={isCounting}>
      <h1>{headline}</h1>
      {incidence && (
        <p>
          {disease.incidence(
            format.number(incidence.sick),
            format.number(incidence.trees),
            format.list(kinds.map((kind) => speciesWords(texts, kind).many))
          )}{' '}
          {disease.between(share(incidence.share), share(incidence.low), share(incidence.high))}{' '}
          {disease.certain(format.number(confirmed), format.number(cases.length - confirmed))}{' '}
          {caution}
        </p>
      )}
    </div>
  )
}
