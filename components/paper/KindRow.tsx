'use client'

import type { KindToPrune } from '@/lib/domain/pruning/kinds'
import { factsOf } from '@/lib/domain/pruning/species-facts'
import type { StepCode } from '@/lib/domain/pruning/work-card'
import { useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { ShootsDrawing } from '../tree/drawings/ShootsDrawing'
import { type StepWords, stepWords } from '../tree/step-words'

const renewals: readonly StepCode[] = ['renew_spurs', 'renew_shoots']

/** One kind of tree: its name, and what to do in it that is not done in every tree. */
export function KindRow({ kind: { species, cultivars, card } }: { kind: KindToPrune }) {
  const words = useWords()
  const { paper: text } = useLeadWords()
  const { whatToCut } = words
  const format = useFormat()
  const names = useSelect(({ sheet }) =>
    (sheet?.cultivars ?? []).filter(({ no }) => cultivars.includes(no)).map(({ name }) => name)
  )
  const { caution } = factsOf(species)
  const renewal = card.steps.find(({ code }) => renewals.includes(code))
  const last = card.steps.at(-1)
  return (
    <tr>
      <th scope="row">
        {capitalised(speciesWords(words, species).name)}
        <small>{names.length > 0 ? names.join(', ') : text.anyCultivar}</small>
        {caution && <small>{whatToCut.caution[caution.value].lead}</small>}
      </th>
      <td>{renewal ? stepWords(words, format, renewal).do.slice(1).join(' ') : '—'}</td>
      <td>
        {last?.code === 'last_years_wood' && (
          <>
            <svg className="paper-shoots" viewBox="0 0 358 200" aria-hidden="true">
              <ShootsDrawing what={last.what} />
            </svg>
            <Said words={stepWords(words, format, last)} />
          </>
        )}
      </td>
    </tr>
  )
}

function Said({ words }: { words: StepWords }) {
  const { whatToCut } = useWords()
  return (
    <>
      <b>{words.title}.</b> {words.do.join(' ')} <b>{whatToCut.never}:</b> {words.never}
    </>
  )
}
