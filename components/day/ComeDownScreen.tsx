'use client'

import { useState } from 'react'

import { type ComeDown, type Sent, useSelect, useSend } from '@/lib/hooks'
import { useLanguage, useWords } from '../layout/Words'
import { BriefingTopicInShort } from '../ready/BriefingTopicInShort'
import type { How } from '../ready/HowHeard'
import { NewInBriefing } from '../ready/NewInBriefing'
import { useWhatIsNew } from '../ready/use-what-is-new'
import { useTagOf } from '../sync/use-refusal-words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { CardOverScreen } from './CardOverScreen'
import { StopDialog } from './StopDialog'

/** Come down first, then read what is new, then sign. The tree stays theirs. */
export function ComeDownScreen({ asked }: { asked: ComeDown }) {
  const words = useWords()
  const { comeDown: text } = words.briefing
  const language = useLanguage()
  const tagOf = useTagOf()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const name = useSelect((view) => view.me?.personName ?? '')
  const isNew = useWhatIsNew(asked.shiftId, asked.signedVersion)
  const read = isNew.state === 'read' ? isNew.briefing : null
  const changes = isNew.state === 'read' ? isNew.changes : null
  const version = read?.version ?? asked.version
  const told = changes ? [...changes.added, ...changes.reworded] : (read?.topics ?? [])

  const sign = async (how: How) => setSent(await send('sign_briefing', { version, language, how }))
  return (
    <StopDialog tone="come-down" title={text.title}>
      <p className="by">
        <span>{text.orders}</span>
      </p>
      <p>{asked.tree === null ? text.staysYours : text.treeStaysYours(tagOf(asked.tree))}</p>
      {isNew.state === 'reading' && <p role="status">{words.briefing.reading}</p>}
      {isNew.state === 'failed' && <p role="status">{text.notRead}</p>}
      {changes && <NewInBriefing changes={changes} />}
      {told.map((topic) => (
        <BriefingTopicInShort key={topic.code} topic={topic} />
      ))}
      <WhyNot sent={sent} />
      <div className="stack">
        {read && (
          <Button kind="call" wide sub={text.signAs(name, version)} onPress={() => sign('read')}>
            {text.iRead}
          </Button>
        )}
        <Button wide onPress={() => sign('heard')}>
          {text.iWasTold}
        </Button>
      </div>
      <CardOverScreen />
    </StopDialog>
  )
}
