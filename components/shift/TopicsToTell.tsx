'use client'

import { useState } from 'react'

import type { ToldTopic } from '@/lib/domain/safety/briefing-changes'
import { useBriefing, useOldBriefing } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useLeadWords } from '../crew/use-lead-words'
import { useLanguage, useWords } from '../layout/Words'
import { OwnWords } from '../ready/OwnWords'
import { topicWords } from '../ready/topic-words'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'

/** All topics with their sentences, for the lead who stands before the crew; and what was told before. */
export function TopicsToTell({ shiftId }: { shiftId: string }) {
  const words = useWords()
  const { shift: text, proposals } = useLeadWords()
  const briefing = useBriefing(shiftId)
  const [shown, setShown] = useState<number | null>(null)
  const old = useOldBriefing(shiftId, shown)
  if (briefing.state === 'reading') return <p>{words.common.asking}</p>
  if (briefing.state === 'failed') return <p>{faultSentence(words, { fault: briefing.fault })}</p>
  if (!briefing.value) return <p>{text.briefingNone}</p>
  const before = Array.from({ length: briefing.value.version - 1 }, (_, at) => at + 1)
  return (
    <div className="stack">
      <Panel title={text.tellTopics}>
        <Topics topics={briefing.value.topics} />
      </Panel>
      {before.length > 0 && (
        <Panel title={proposals.versions}>
          <div className="stack">
            <div className="yes-no">
              {before.map((version) => (
                <Button
                  key={version}
                  expanded={shown === version}
                  onPress={() => setShown(shown === version ? null : version)}
                >
                  {proposals.version(version)}
                </Button>
              ))}
            </div>
            {shown !== null && old.state === 'reading' && <p>{words.common.asking}</p>}
            {shown !== null && old.state === 'failed' && (
              <p>{faultSentence(words, { fault: old.fault })}</p>
            )}
            {old.state === 'read' && old.value && <Topics topics={old.value.topics} />}
          </div>
        </Panel>
      )}
    </div>
  )
}

function Topics({ topics }: { topics: readonly ToldTopic[] }) {
  const words = useWords()
  const language = useLanguage()
  return (
    <ol className="topics">
      {topics.map((topic, at) => {
        const { title, titleLang, says, own } = topicWords(topic, language, words)
        return (
          <li key={topic.code} className="topic">
            <h3 lang={titleLang}>
              {at + 1}. {title}
            </h3>
            {own && <OwnWords own={own} />}
            {says.map((sentence) => (
              <p key={sentence}>{sentence}</p>
            ))}
          </li>
        )
      })}
    </ol>
  )
}
