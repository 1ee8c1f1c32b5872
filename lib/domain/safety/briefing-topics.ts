/** The topics of a shift's briefing that come with words of our own, and where each comes from. */

import { commonPractice, houseRule, published, type Source } from './source'

export const topicCodes = [
  'stop_signal',
  'tools',
  'off_today',
  'ladders',
  'saws',
  'minors',
  'keep_out',
  'lines',
  'slope',
  'wet',
  'heat',
  'cold',
  'wind',
  'thunder',
  'disease',
  'nests',
] as const
export type TopicCode = (typeof topicCodes)[number]

export const drawings = [
  'signal',
  'tools',
  'off',
  'ladder',
  'saw',
  'minor',
  'keep_out',
  'line_over_rows',
  'slope',
  'wet',
  'heat',
  'cold',
  'wind',
  'thunder',
  'disease',
  'nest',
] as const
export type Drawing = (typeof drawings)[number]

export type Topic = { code: TopicCode; drawing: Drawing; source: Source }

export function topicOf(code: TopicCode): Topic {
  return { code, ...topics[code] }
}

const topics: Record<TopicCode, Omit<Topic, 'code'>> = {
  stop_signal: { drawing: 'signal', source: commonPractice },
  tools: { drawing: 'tools', source: commonPractice },
  off_today: { drawing: 'off', source: published('UC IPM, Apricot and Cherry') },
  ladders: {
    drawing: 'ladder',
    source: published('Cal. Code Regs. Title 8 §3276; WAC 296-307-05505'),
  },
  saws: { drawing: 'saw', source: commonPractice },
  minors: { drawing: 'minor', source: houseRule },
  keep_out: { drawing: 'keep_out', source: houseRule },
  lines: { drawing: 'line_over_rows', source: published('29 CFR 1910.269(x)') },
  slope: { drawing: 'slope', source: commonPractice },
  wet: { drawing: 'wet', source: commonPractice },
  heat: { drawing: 'heat', source: published('Cal. Code Regs. Title 8 §3395') },
  cold: { drawing: 'cold', source: commonPractice },
  wind: { drawing: 'wind', source: published('OSHA QuickCard, tripod orchard ladders') },
  thunder: { drawing: 'thunder', source: published('NWS, lightning safety outdoors') },
  disease: { drawing: 'disease', source: published('UC IPM') },
  nests: { drawing: 'nest', source: commonPractice },
}
