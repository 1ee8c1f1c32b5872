'use client'

import { useBriefing } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useLeadWords } from '../crew/use-lead-words'
import { useLanguage, useWords } from '../layout/Words'
import { topicWords } from '../ready/topic-words'
import { Panel } from '../ui/Panel'

/** All topics with their sentences, for the lead who stands before the crew. */
export function TopicsToTell({ shiftId }: { shiftId: string }) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  const language = useLanguage()
  const briefing = useBriefing(shiftId)
  if (briefing.state === 'reading') return <p>{words.common.asking}</p>
  if (briefing.state === 'failed') return <p>{faultSentence(words, { fault: briefing.fault })}</p>
  if (!briefing.value) return <p>{text.briefingNone}</p>
  return (
    <Panel title={text.tellTopics}>
      <ol className="topics">
        {briefing.value.topics.map((topic, at) => {
          const { title, says, own } = topicWords(topic, language, words)
          return (
            <li key={topic.code} className="topic">
              <h3>
                {at + 1}. {title}
              </h3>
              {says.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
              {own && (
                <p lang={own.lang}>
                  <b>{own.words}</b>
                </p>
              )}
            </li>
          )
        })}
      </ol>
    </Panel>
  )
}
