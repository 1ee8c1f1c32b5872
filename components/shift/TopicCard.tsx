'use client'

import { useState } from 'react'

import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextArea } from '../ui/TextArea'
import { knownCode, type TopicDraft } from './briefing-draft'

type TopicCardProps = {
  topic: TopicDraft
  number: number
  onWrite: (topic: TopicDraft) => void
  onUp: (() => void) | undefined
  onDown: (() => void) | undefined
  onLeaveOut: () => void
}

/** The topic's title, its place in the order, and the lead's own words to it. */
export function TopicCard({ topic, number, onWrite, onUp, onDown, onLeaveOut }: TopicCardProps) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  const code = knownCode(topic.code)
  const hasWords = `${topic.en}${topic.es}`.trim() !== ''
  const [isOpen, setIsOpen] = useState(code === null || hasWords)
  const title = code === null ? text.ownTitle : words.topics[code].title

  return (
    <li className="topic">
      <div className="topic-head">
        <span className="grow">
          <b>
            {number}. {title}
          </b>
        </span>
        <div className="topic-moves">
          {onUp && <Button kind="quiet" icon="higher" label={text.up(title)} onPress={onUp} />}
          {onDown && <Button kind="quiet" icon="down" label={text.down(title)} onPress={onDown} />}
          {code !== null && (
            <Button
              kind="quiet"
              icon="edit"
              label={text.ownWords(title)}
              expanded={isOpen}
              onPress={() => setIsOpen(!isOpen)}
            />
          )}
          <Button kind="quiet" icon="cross" label={text.leaveOut(title)} onPress={onLeaveOut} />
        </div>
      </div>
      {isOpen && (
        <div className="stack">
          <p className="small">{code === null ? text.topicHint : text.wordsHint}</p>
          <div className="fields">
            <TextArea
              label={text.ownEnglish}
              value={topic.en}
              maxLength={1000}
              onChange={(en) => onWrite({ ...topic, en })}
            />
            <TextArea
              label={text.ownSpanish}
              value={topic.es}
              maxLength={1000}
              onChange={(es) => onWrite({ ...topic, es })}
            />
          </div>
          <p className="small">{text.ownHint}</p>
        </div>
      )}
    </li>
  )
}
