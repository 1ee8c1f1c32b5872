'use client'

import { topicOf } from '@/lib/domain/safety/briefing-topics'
import type { Source } from '@/lib/domain/safety/source'
import { useLanguage, useWords } from '../layout/Words'
import { OwnWords } from './OwnWords'
import { TopicDrawing } from './TopicDrawing'
import type { TopicWords } from './topic-words'
import './briefing.css'

/** One topic: a title that says what to do, one drawing, three sentences, and where they come from. */
export function BriefingTopic({ topic }: { topic: TopicWords }) {
  const { briefing } = useWords()
  const language = useLanguage()
  const { code, title, titleLang, says, own, source } = topic
  return (
    <>
      <h1 lang={titleLang}>{title}</h1>
      {titleLang !== undefined && titleLang !== language && own === null && (
        <p className="small">{briefing.writtenIn[titleLang]}</p>
      )}
      {code !== null && <TopicDrawing name={topicOf(code).drawing} />}
      {own !== null && <OwnWords own={own} />}
      <ul className="says">
        {says.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {source !== null && <From source={source} />}
    </>
  )
}

function From({ source }: { source: Source }) {
  const { things } = useWords()
  return (
    <p className="tiny">
      {source.kind === 'published'
        ? things.source.published(source.name)
        : things.source[source.kind]}
    </p>
  )
}
