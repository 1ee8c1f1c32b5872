'use client'

import { useLanguage, useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import type { TopicWords } from './topic-words'

/** What the lead wrote, and in which language where it is not the reader's. */
export function OwnWords({ own }: { own: NonNullable<TopicWords['own']> }) {
  const { briefing } = useWords()
  const language = useLanguage()
  return (
    <Note icon="edit" tone="call" lead={briefing.yourLeadSays}>
      {own.lang !== language && <span className="small">{briefing.writtenIn[own.lang]}</span>}
      <span className="own" lang={own.lang}>
        {own.words}
      </span>
    </Note>
  )
}
