'use client'

import { type Decision, worthTelling } from '@/lib/domain/safety/ours-or-the-arborists'
import { routes } from '@/lib/routes'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { RuleSources } from './RuleSources'
import { useReasonWords } from './reason-words'
import { useLeadsHere } from './StuckSheet'

type OursOrNotProps = {
  decision: Decision
  /** Questions are still open. */
  isAsking: boolean
}

/** What the rules say, and why; that it is ours never keeps anybody from flagging it. */
export function OursOrNot({ decision, isAsking }: OursOrNotProps) {
  const { ours } = useWords()
  const nameOf = useNameOf()
  const wordsOf = useReasonWords()
  const [lead] = useLeadsHere()
  const reasons = worthTelling(decision)
  if (decision.outcome === 'ours')
    return (
      <>
        <Note icon="info" role="status" lead={ours.ours}>
          {ours.oursSays(lead ? nameOf(lead) : ours.yourLead)}
        </Note>
        <ButtonLink wide icon="call" href={routes.callLead()}>
          {ours.askLead}
        </ButtonLink>
      </>
    )
  return (
    <>
      <Note mark="arborist" tone="arb" role="status" lead={isAsking ? ours.referOpen : ours.refer}>
        {!isAsking && <ReasonList lines={wordsOf(reasons)} />}
      </Note>
      {!isAsking && <RuleSources reasons={reasons} />}
    </>
  )
}

function ReasonList({ lines }: { lines: readonly string[] }) {
  const { ours } = useWords()
  return (
    <>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {lines.length > 1 && ours.anyIsEnough}
    </>
  )
}
