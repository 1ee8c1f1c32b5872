/** The topics proposed for a shift's briefing, from what is true of that shift. */

import { commonPractice, houseRule, published, type Source } from './source'

export const topicCodes = [
  'stop_signal',
  'tools',
  'ladders',
  'saws',
  'keep_out',
  'lines',
  'slope',
  'heat',
  'cold',
  'wind',
  'disease',
  'nests',
] as const
export type TopicCode = (typeof topicCodes)[number]

export const drawings = [
  'signal',
  'tools',
  'ladder',
  'saw',
  'keep_out',
  'line_over_rows',
  'slope',
  'heat',
  'cold',
  'wind',
  'disease',
  'nest',
] as const
export type Drawing = (typeof drawings)[number]

export type Topic = { code: TopicCode; drawing: Drawing; source: Source }

export type ShiftHazards = {
  /** Some tree of the round asks for one. */
  ladderTrees: boolean
  sawTrees: boolean
  /** Trees are closed round an open arborist flag. */
  keepOuts: boolean
  /** Some flag or lead says that a line runs over or beside a block. */
  powerLines: boolean
  /** Some tree carries an open disease flag. */
  diseasedTrees: boolean
  slope: boolean
  nests: boolean
  /** Null where nobody looked. */
  highestC: number | null
  lowestC: number | null
  gustKmPerH: number | null
}

/** 80 °F, where the state asks for shade to be up. */
const shadeFromC = 26.7
/** Common practice, no source: hands are slow and bark is slippery. */
const coldBelowC = 5
/** Beaufort 5, small trees sway (NWS, from 19 mph): no ladders. The limit is common practice. */
const gustsFromKmPerH = 30

/** What always holds comes first, then this shift's own hazards; a lead adds and leaves out. */
export function proposedTopics(hazards: ShiftHazards): Topic[] {
  const { highestC, lowestC, gustKmPerH } = hazards
  const isProposed: Record<TopicCode, boolean> = {
    stop_signal: true,
    tools: true,
    ladders: hazards.ladderTrees,
    saws: hazards.sawTrees,
    keep_out: hazards.keepOuts,
    lines: hazards.powerLines,
    slope: hazards.slope,
    heat: highestC !== null && highestC >= shadeFromC,
    cold: lowestC !== null && lowestC < coldBelowC,
    wind: gustKmPerH !== null && gustKmPerH >= gustsFromKmPerH,
    disease: hazards.diseasedTrees,
    nests: hazards.nests,
  }
  return topicCodes.filter((code) => isProposed[code]).map(topicOf)
}

export function topicOf(code: TopicCode): Topic {
  return { code, ...topics[code] }
}

const topics: Record<TopicCode, Omit<Topic, 'code'>> = {
  stop_signal: { drawing: 'signal', source: commonPractice },
  tools: { drawing: 'tools', source: commonPractice },
  ladders: {
    drawing: 'ladder',
    source: published('Cal. Code Regs. Title 8 §3276; WAC 296-307-05505'),
  },
  saws: { drawing: 'saw', source: commonPractice },
  keep_out: { drawing: 'keep_out', source: houseRule },
  lines: { drawing: 'line_over_rows', source: published('29 CFR 1910.269(x)') },
  slope: { drawing: 'slope', source: commonPractice },
  heat: { drawing: 'heat', source: published('Cal. Code Regs. Title 8 §3395') },
  cold: { drawing: 'cold', source: commonPractice },
  wind: { drawing: 'wind', source: published('OSHA QuickCard, tripod orchard ladders') },
  disease: { drawing: 'disease', source: published('UC IPM') },
  nests: { drawing: 'nest', source: commonPractice },
}
