/** One topic of a briefing as it is read: our sentences for it, and the lead's own words. */

import { type TopicCode, topicCodes, topicOf } from '@/lib/domain/safety/briefing-topics'
import type { Source } from '@/lib/domain/safety/source'
import type { Briefing } from '@/lib/hooks'
import type { Messages } from '@/lib/text/messages'

export type TopicWords = {
  code: TopicCode | null
  title: string
  /** Where it is not the reader's: a lead's own title that is written in one language only. */
  titleLang: 'en' | 'es' | undefined
  says: readonly string[]
  /** What the lead wrote; in their language where nothing else is there. */
  own: { words: string; lang: 'en' | 'es' } | null
  /** Where a number in it comes from. */
  source: Source | null
}

export function topicWords(
  topic: Briefing['topics'][number],
  language: 'en' | 'es',
  text: Pick<Messages, 'topics'>
): TopicWords {
  const own = ownWords(topic, language)
  const code = topicCodes.find((known) => known === topic.code) ?? null
  if (code !== null) {
    return { code, ...text.topics[code], titleLang: undefined, own, source: topicOf(code).source }
  }
  // A topic of the lead's own has no title but its first line.
  const [title = topic.code, ...rest] = (own?.words ?? topic.code).split('\n')
  const words = rest.join('\n').trim()
  return {
    code,
    title,
    titleLang: own?.lang,
    says: [],
    own: own && words ? { ...own, words } : null,
    source: null,
  }
}

function ownWords(topic: Briefing['topics'][number], language: 'en' | 'es'): TopicWords['own'] {
  const wanted = [language, language === 'en' ? 'es' : 'en'] as const
  const lang = wanted.find((one) => topic[one]?.trim())
  return lang === undefined ? null : { words: topic[lang]?.trim() ?? '', lang }
}
