/** A briefing while it is written: topics in order, and the lead's own words. */

import { proposedTopics, type TopicCode, topicCodes } from '@/lib/domain/safety/briefing-topics'
import type { ArgsOf } from '@/lib/events/commands'
import { type Briefing, isInRound, type View } from '@/lib/hooks'

export type TopicDraft = { code: string; en: string; es: string }

export type Change = 'before_next_tree' | 'come_down'

export type BriefingDraft = { topics: TopicDraft[]; change: Change | null }

/** What is true of this shift proposes the topics. Nobody has looked at the weather or the slope yet. */
export function proposedFor(view: View): TopicDraft[] {
  const { state, sheet } = view
  const trees = (sheet?.trees ?? []).filter((tree) => isInRound(view, tree))
  const flags = Object.values(state?.flags ?? {})
  const ladderFromCm = state?.orchard.houseRules.ladder_from_cm ?? Infinity
  return proposedTopics({
    ladderTrees: trees.some(({ heightCm }) => heightCm !== null && heightCm > ladderFromCm),
    sawTrees: trees.some(({ asksSaw }) => asksSaw),
    keepOuts: flags.some(({ kind }) => kind === 'arborist'),
    powerLines: flags.some(({ sign }) => sign === 'power_line'),
    diseasedTrees: flags.some(({ kind }) => kind === 'disease'),
    slope: false,
    nests: flags.some(({ sign }) => sign === 'nest'),
    highestC: null,
    lowestC: null,
    gustKmPerH: null,
  }).map(({ code }) => emptyTopic(code))
}

export function topicsOf(briefing: Briefing): TopicDraft[] {
  return briefing.topics.map(({ code, en, es }) => ({ code, en: en ?? '', es: es ?? '' }))
}

export function emptyTopic(code: string): TopicDraft {
  return { code, en: '', es: '' }
}

/** A code of ours, for topics that the lead words alone. */
export function ownTopic(topics: readonly TopicDraft[]): TopicDraft {
  const taken = new Set(topics.map(({ code }) => code))
  let at = 1
  while (taken.has(`own_${at}`)) at++
  return emptyTopic(`own_${at}`)
}

export function knownCode(code: string): TopicCode | null {
  return topicCodes.find((known) => known === code) ?? null
}

/** Known topics that are not in it. */
export function topicsLeft(topics: readonly TopicDraft[]): TopicCode[] {
  return topicCodes.filter((code) => !topics.some((topic) => topic.code === code))
}

export function moved(topics: readonly TopicDraft[], from: number, to: number): TopicDraft[] {
  const rest = topics.filter((_, at) => at !== from)
  const topic = topics[from]
  return topic ? rest.toSpliced(to, 0, topic) : rest
}

/** At least one topic, and words in each that has none of ours. */
export function isWritten(topics: readonly TopicDraft[]): boolean {
  return (
    topics.length > 0 &&
    topics.every(({ code, en, es }) => knownCode(code) !== null || `${en}${es}`.trim() !== '')
  )
}

export function topicArgs(topics: readonly TopicDraft[]): ArgsOf<'write_briefing'>['topics'] {
  return topics.map(({ code, en, es }) => ({
    code,
    ...(en.trim() !== '' && { en: en.trim() }),
    ...(es.trim() !== '' && { es: es.trim() }),
  }))
}
