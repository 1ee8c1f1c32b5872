'use client'

import type { ToldTopic } from '@/lib/domain/safety/briefing-changes'
import { useLanguage, useWords } from '../layout/Words'
import './briefing.css'
import { OwnWords } from './OwnWords'
import { topicWords } from './topic-words'

/** A topic without its drawing: the lead's own words first, they are what is new. */
export function BriefingTopicInShort({ topic }: { topic: ToldTopic }) {
  const words = useWords()
  const language = useLanguage()
  const { title, titleLang, says, own } = topicWords(topic, language, words)
  return (
    <section className="stack">
      <h2 lang={titleLang}>{title}</h2>
      {own !== null && <OwnWords own={own} />}
      {says.length > 0 && (
        <ul className="says">
          {says.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  )
}
