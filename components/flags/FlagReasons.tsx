'use client'

import type { FlaggedLimb, ReferReason } from '@/lib/events/state'
import { useWords } from '../layout/Words'
import { RuleSources } from '../tree/RuleSources'
import { useLimbWords, useReasonWords } from '../tree/reason-words'

type FlagReasonsProps = { reasons: readonly ReferReason[] | null; limb: FlaggedLimb | null }

/** Which limb, and why it is the arborist's; where nobody was asked there is nothing to say. */
export function FlagReasons({ reasons, limb }: FlagReasonsProps) {
  const { ours } = useWords()
  const wordsOf = useReasonWords()
  const which = useLimbWords()(limb)
  return (
    <>
      {which !== null && (
        <p>
          {ours.limb}: {which}
        </p>
      )}
      {reasons?.length === 0 && <p>{ours.foundNothing}</p>}
      {reasons !== null && reasons.length > 0 && (
        <>
          <ul className="plain">
            {wordsOf(reasons).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
          <RuleSources reasons={reasons} />
        </>
      )}
    </>
  )
}
