'use client'

import type { BriefingChanges, ToldTopic } from '@/lib/domain/safety/briefing-changes'
import { useLanguage, useWords } from '../layout/Words'
import { topicWords } from './topic-words'

/** What was added, reworded and left out, in few words each. */
export function NewInBriefing({ changes }: { changes: BriefingChanges }) {
  const { briefing } = useWords()
  const { added, reworded, leftOut } = changes
  const isOrderOnly = added.length + reworded.length + leftOut.length === 0
  return (
    <div className="stack">
      {isOrderOnly && <p>{briefing.onlyOrder}</p>}
      <Titles of={added} says={briefing.added} />
      <Titles of={reworded} says={briefing.reworded} />
      <Titles of={leftOut} says={briefing.leftOut} />
    </div>
  )
}

function Titles({ of, says }: { of: readonly ToldTopic[]; says: string }) {
  const words = useWords()
  const language = useLanguage()
  if (of.length === 0) return null
  return (
    <section>
      <p className="label">{says}</p>
      <ul className="says">
        {of.map((topic) => {
          const { title, titleLang } = topicWords(topic, language, words)
          return (
            <li key={topic.code} lang={titleLang}>
              {title}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
