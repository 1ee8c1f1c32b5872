/** A briefing while it is written: topics in order, and the lead's own words. */

import {
  type HeatFacts,
  type Proposal,
  proposedTopics,
  type ShiftFacts,
} from '@/lib/domain/safety/briefing-proposals'
import { type TopicCode, topicCodes } from '@/lib/domain/safety/briefing-topics'
import type { ArgsOf } from '@/lib/events/commands'
import { asksLadder } from '@/lib/events/missing'
import type { Shift } from '@/lib/events/state'
import { type Briefing, isInRound, type View } from '@/lib/hooks'
import { proposedOffs } from './offs'

export type TopicDraft = { code: string; en: string; es: string }

export type Change = 'before_next_tree' | 'come_down'

export type BriefingDraft = {
  topics: TopicDraft[]
  change: Change | null
  /** Questions that were answered with no. */
  no: readonly string[]
}

export function proposalsFor(view: View, shift: Shift, heat: HeatFacts): Proposal[] {
  const facts = factsOf(view, shift, heat)
  return facts ? proposedTopics(facts) : []
}

/** What the orchard knows of this shift. Before it opens, what is off is what the calendar proposes. */
function factsOf({ state, sheet, ground }: View, shift: Shift, heat: HeatFacts): ShiftFacts | null {
  if (!state) return null
  const trees = (sheet?.trees ?? []).filter((tree) => isInRound({ state }, tree))
  const flags = Object.values(state.flags)
  const sick = new Map<number, number>()
  for (const { tree } of flags.filter(({ kind }) => kind === 'disease')) {
    const block = ground.trees.get(tree)?.block
    if (block !== undefined) sick.set(block, (sick.get(block) ?? 0) + 1)
  }
  const round = state.rounds[shift.roundId]
  const isOpen = shift.state === 'open'
  const minors = Object.keys(state.minors).filter((id) => !isOpen || state.attendance[id])
  return {
    off: isOpen
      ? shift.off
      : proposedOffs(shift.date, round?.species ?? [], state.orchard.houseRules),
    ladderTrees: trees.filter((tree) => asksLadder(state, tree)).length,
    sawTrees: trees.filter(({ asksSaw }) => asksSaw).length,
    hazards: flags.filter(({ kind }) => kind === 'arborist'),
    diseased: [...sick].map(([block, count]) => ({ block, trees: count })),
    minors: minors.length,
    round: round?.kind ?? null,
    heat,
  }
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

type Told = Pick<TopicDraft, 'en' | 'es'>

/** What the orchard knows now and this topic does not say yet, in whichever language it is missing. */
export function lacksFacts(topic: TopicDraft, facts: Told): boolean {
  return !topic.en.includes(facts.en) || !topic.es.includes(facts.es)
}

/** The facts first, then what the lead wrote. */
export function withFacts(topic: TopicDraft, facts: Told): TopicDraft {
  const put = (before: string, fact: string) =>
    before.includes(fact) ? before : [fact, before].filter((words) => words !== '').join('\n')
  return { ...topic, en: put(topic.en, facts.en), es: put(topic.es, facts.es) }
}

export function topicArgs(topics: readonly TopicDraft[]): ArgsOf<'write_briefing'>['topics'] {
  return topics.map(({ code, en, es }) => ({
    code,
    ...(en.trim() !== '' && { en: en.trim() }),
    ...(es.trim() !== '' && { es: es.trim() }),
  }))
}
