'use client'

import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import type { Asked } from './use-ask'
import { useRefusalsOf } from './use-refusals-of'

type AskedNoteProps = {
  asked: Asked
  /** Whose work was asked for, where it is not the reader's. */
  whose?: string | undefined
}

/** Why something that a lead asked for did not come about, everything at once. */
export function AskedNote({ asked, whose }: AskedNoteProps) {
  const words = useWords()
  const sentenceOf = useRefusalsOf(whose)
  switch (asked.state) {
    case 'idle':
      return null
    case 'asking':
      return <p role="status">{words.common.asking}</p>
    case 'no_answer':
      return (
        <Note tone="call" icon="nobars" role="alert">
          {words.errors.noAnswer}
        </Note>
      )
    case 'failed':
      return (
        <Note tone="stop" icon="cross" role="alert">
          {faultSentence(words, { fault: asked.fault, code: asked.code ?? undefined })}
        </Note>
      )
    case 'refused':
      return (
        <Note tone="stop" icon="cross" role="alert">
          <ul>
            {asked.refused.map((refusal) => (
              <li key={JSON.stringify(refusal)}>{sentenceOf(refusal)}</li>
            ))}
          </ul>
        </Note>
      )
  }
}
