'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { knownCode, type TopicDraft } from './briefing-draft'
import type { ProposedTopic } from './use-proposals'

type NotTakenInProps = {
  proposed: readonly ProposedTopic[]
  onTake: (topic: TopicDraft) => void
}

/** What was left out, or came up since the last version; each with its reason. */
export function NotTakenIn({ proposed, onTake }: NotTakenInProps) {
  const words = useWords()
  const { proposals: text } = useLeadWords()
  if (proposed.length === 0) return null
  return (
    <section className="stack">
      <h3>{text.notIn}</h3>
      <ul className="topics">
        {proposed.map(({ topic, why, source }) => {
          const code = knownCode(topic.code)
          const title = code ? words.topics[code].title : topic.code
          return (
            <li key={topic.code} className="topic">
              <div className="topic-head">
                <span className="grow">
                  <b>{title}</b>
                  <span className="small">{why}</span>
                  <span className="tiny">{source}</span>
                </span>
                <Button label={text.takeTopic(title)} onPress={() => onTake(topic)}>
                  {text.take}
                </Button>
              </div>
            </li>
          )
        })}
      </ul>
    </section>
  )
}
