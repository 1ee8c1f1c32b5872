'use client'

import { useSelect } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { Why } from '../ui/Why'
import type { Asked } from './use-claim'

export const claimWhyId = 'claim-why'

type ClaimAskedProps = {
  asked: Asked
  isDealt: boolean
  /** Also without signal: dealt to me, and nothing that asks for a second person. */
  mayBegin: boolean
  /** Why yes waits: nobody is named for a tree that asks for two, or something is missing. */
  waits: 'company' | 'missing' | null
  /** What is missing, in words. */
  missing: readonly string[]
}

/** What is to be known before one says yes, and what became of saying it. */
export function ClaimAsked({ asked, isDealt, mayBegin, waits, missing }: ClaimAskedProps) {
  const words = useWords()
  const offline = useSelect((view) => view.signal === 'no_signal')
  const { claim } = words

  switch (asked.state) {
    case 'no_answer':
      return (
        <Why tone="wrong">{mayBegin ? `${claim.noAnswer} ${claim.beginWhy}` : claim.noAnswer}</Why>
      )
    case 'failed':
      return (
        <Why tone="wrong">
          {faultSentence(words, { fault: asked.fault, code: asked.code ?? undefined })}
        </Why>
      )
    case 'cannot_begin':
      return <Why tone="wrong">{claim.cannotBegin}</Why>
    case 'not_asked':
    case 'asking':
    case 'refused': {
      if (waits === 'company') return <Why id={claimWhyId}>{claim.chooseWho}</Why>
      if (waits === 'missing') {
        // One reason stands here itself; of several the list above is the better teller.
        const [only, ...others] = missing
        return (
          <Why id={claimWhyId}>
            {others.length > 0 ? claim.severalMissing(missing.length) : only}
          </Why>
        )
      }
      if (!offline) return null
      const needsSignal = isDealt ? claim.twoNeedSignal : claim.needsSignal
      return <Why id={claimWhyId}>{mayBegin ? claim.beginWhy : needsSignal}</Why>
    }
  }
}
