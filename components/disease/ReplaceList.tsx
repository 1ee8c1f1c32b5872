'use client'

import { useState } from 'react'

import type { ReplaceReason, ToReplace } from '@/lib/domain/disease/replace'
import { type OpenFlag, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { WriteOnFlag } from '../flags/WriteOnFlag'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { signWords } from '../tree/flag-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'

/** Trees that somebody should think about taking out, each with its reasons; the manager decides. */
export function ReplaceList({ toReplace }: { toReplace: readonly ToReplace[] }) {
  const { disease } = useLeadWords()
  return (
    <section className="disease-part" aria-label={disease.replace}>
      <h2>{disease.replace}</h2>
      {toReplace.length === 0 ? (
        <p className="small">{disease.noneToReplace}</p>
      ) : (
        <ul className="disease-replace">
          {toReplace.map((one) => (
            <OneToReplace key={one.no} {...one} />
          ))}
        </ul>
      )}
      <p className="small">{disease.replaceNote}</p>
    </section>
  )
}

function OneToReplace({ no, reasons }: ToReplace) {
  const { disease } = useLeadWords()
  const reasonWords = useReasonWords()
  const tag = useTagOf()(no)
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const flag = useSelect((view) => worstFlag(view.state?.flags ?? {}, no))
  const [isWriting, setIsWriting] = useState(false)
  return (
    <li>
      <h3>{tag}</h3>
      <p>{reasons.map(reasonWords).join('; ')}.</p>
      <div className="row wrap">
        <ButtonLink icon="map" href={routes.map(no)}>
          {tag}
        </ButtonLink>
        {isManager && flag && (
          <Button
            icon="edit"
            label={`${disease.decide}: ${tag}`}
            onPress={() => setIsWriting(true)}
          >
            {disease.decide}
          </Button>
        )}
      </div>
      {flag && isWriting && (
        <WriteOnFlag flag={flag} tag={tag} onClose={() => setIsWriting(false)} />
      )}
    </li>
  )
}

function useReasonWords(): (reason: ReplaceReason) => string {
  const words = useWords()
  const { disease } = useLeadWords()
  const { reason: say } = disease
  return (reason) => {
    switch (reason.code) {
      case 'dead':
        return say.dead
      case 'badly_sick':
        return say.badly_sick(signWords(words, 'disease', reason.sign).toLowerCase())
      case 'old':
        return say.old(reason.years, reason.usualYears)
      case 'beside_young':
        return say.beside_young(reason.trees)
      case 'sick_neighbours':
        return say.sick_neighbours(reason.trees)
    }
  }
}

function worstFlag(
  flags: Readonly<Record<string, Omit<OpenFlag, 'id'>>>,
  no: number
): OpenFlag | null {
  const own = Object.entries(flags).filter(
    ([, { tree, kind }]) => tree === no && kind === 'disease'
  )
  const [worst] = own.toSorted(
    ([, a], [, b]) => Number(b.state === 'confirmed') - Number(a.state === 'confirmed')
  )
  return worst ? { id: worst[0], ...worst[1] } : null
}
