'use client'

import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'

/** For when the phones or the power fail: print before, enter afterwards. */
export function OnPaper() {
  const { paper, fromPaper, labels } = useLeadWords()
  return (
    <Panel title={paper.onPaper}>
      <div className="stack">
        <p>{paper.lead}</p>
        <ButtonLink href={routes.paper()}>{paper.title}</ButtonLink>
        <ButtonLink href={routes.fromPaper()}>{fromPaper.title}</ButtonLink>
        <ButtonLink href={routes.labels()}>{labels.link}</ButtonLink>
      </div>
    </Panel>
  )
}
