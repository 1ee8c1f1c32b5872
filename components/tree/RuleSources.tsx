'use client'

import { useWords } from '../layout/Words'
import { More } from '../ui/More'
import { type AnyReason, useSourceWords } from './reason-words'

/** Where the rules behind some reasons come from, and how far that is known. */
export function RuleSources({ reasons }: { reasons: readonly AnyReason[] }) {
  const { ours } = useWords()
  const sourcesOf = useSourceWords()
  return (
    <More title={ours.sources}>
      <ul className="small">
        {sourcesOf(reasons).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p className="small">{ours.localWins}</p>
    </More>
  )
}
