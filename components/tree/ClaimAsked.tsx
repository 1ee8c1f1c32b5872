'use client'

import { myDealtTrees, useSelect } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { Why } from '../ui/Why'
import type { Asked } from './use-claim'

export const claimWhyId = 'claim-why'

type ClaimAskedProps = {
  asked: Asked
  tree: number
  /** Nobody is named yet for a tree that asks for two. */
  needsCompany: boolean
}

/** What is to be known before one says yes, and what became of saying it. */
export function ClaimAsked({ asked, tree, needsCompany }: ClaimAskedProps) {
  const words = useWords()
  const offline = useSelect((view) => view.signal === 'no_signal')
  const isDealt = useSelect((view) => myDealtTrees(view).includes(tree))
  const { claim } = words

  switch (asked.state) {
    case 'no_answer':
      return (
        <Why tone="wrong">{isDealt ? `${claim.noAnswer} ${claim.beginWhy}` : claim.noAnswer}</Why>
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
      if (needsCompany) return <Why id={claimWhyId}>{claim.chooseWho}</Why>
      if (offline) return <Why id={claimWhyId}>{isDealt ? claim.beginWhy : claim.needsSignal}</Why>
      return null
    }
  }
}
