'use client'

import { use } from 'react'

import type { Proposal } from '@/lib/domain/safety/briefing-proposals'
import { topicOf } from '@/lib/domain/safety/briefing-topics'
import type { Shift } from '@/lib/events/state'
import { useSelect } from '@/lib/hooks'
import { leadMessages, messages } from '@/lib/text/messages'
import { useLanguage } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { useCloseWatch } from '../weather/use-close-watch'
import { proposalsFor, type TopicDraft } from './briefing-draft'
import { factsWords, reasonWords, type Spoken } from './reason-words'

export type ProposedTopic = {
  /** With its facts in both languages. */
  topic: TopicDraft
  /** For the lead. */
  why: string
  source: string
}

/** What this shift's own facts propose; a crew reads two languages, so its facts are said in both. */
export function useProposals(shift: Shift): ProposedTopic[] {
  const language = useLanguage()
  const tag = useTagOf()
  const blocks = useSelect((view) => view.ground.blocks)
  const watch = useCloseWatch(shift.date)
  const heat = {
    isWave: watch?.heatWave === 'yes',
    newPeople: watch?.isWarm ? (watch.newPeople?.length ?? 0) : 0,
  }
  const proposals = useSelect((view) => proposalsFor(view, shift, heat))
  const spoken: Record<'en' | 'es', Spoken> = {
    en: { words: use(messages('en')), lead: use(leadMessages('en')) },
    es: { words: use(messages('es')), lead: use(leadMessages('es')) },
  }
  const named = { tag, block: (no: number) => blocks.get(no)?.name ?? String(no) }
  const proposed = (proposal: Proposal): ProposedTopic => {
    const { source } = topicOf(proposal.code)
    const says = spoken[language].words.things.source
    return {
      topic: {
        code: proposal.code,
        en: factsWords(proposal, spoken.en, named),
        es: factsWords(proposal, spoken.es, named),
      },
      why: proposal.reasons.map((reason) => reasonWords(reason, spoken[language], named)).join(' '),
      source: source.kind === 'published' ? says.published(source.name) : says[source.kind],
    }
  }
  return proposals.map(proposed)
}
