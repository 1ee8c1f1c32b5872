/**
 * Which topics a shift's own facts propose, each with why. A lead takes them, words them, leaves them out. What
 * no orchard knows by itself (slope, weather, a nest seen this morning) is asked as a plain question.
 */

import { type TopicCode, topicCodes } from './briefing-topics'

export type ShiftFacts = {
  /** Species, or 'ladder', that are off today, and why. */
  off: Readonly<Record<string, string>>
  /** Trees of the round that ask for one. */
  ladderTrees: number
  sawTrees: number
  /** Open flags for the arborist. */
  hazards: readonly { sign: string; tree: number }[]
  /** Trees with an open disease flag, by block. */
  diseased: readonly { block: number; trees: number }[]
  /** People under age who take part. */
  minors: number
  round: string | null
  heat: HeatFacts
}

/** How many who are here are watched closely because they are new and it is hot. */
export type HeatFacts = { isWave: boolean; newPeople: number }

export type Reason =
  | { kind: 'always' }
  | { kind: 'off'; what: string; because: string }
  | { kind: 'ladder_trees'; count: number }
  | { kind: 'saw_trees'; count: number }
  | { kind: 'minors'; count: number }
  | { kind: 'hazard'; sign: string; trees: number[] }
  | { kind: 'disease'; block: number; trees: number }
  | { kind: 'heat_wave' }
  | { kind: 'new_in_heat'; count: number }
  | { kind: 'round'; round: string }

export type Proposal = { code: TopicCode; reasons: Reason[] }

/** In the order in which they are told. */
export function proposedTopics(facts: ShiftFacts): Proposal[] {
  return topicCodes
    .map((code) => ({ code, reasons: reasonsFor(code, facts) }))
    .filter(({ reasons }) => reasons.length > 0)
}

function reasonsFor(code: TopicCode, facts: ShiftFacts): Reason[] {
  switch (code) {
    case 'stop_signal':
    case 'tools':
      return [{ kind: 'always' }]
    case 'off_today':
      return offs(facts, (what) => what !== 'ladder')
    case 'ladders':
      return [
        ...counted('ladder_trees', facts.ladderTrees),
        ...offs(facts, (what) => what === 'ladder'),
      ]
    case 'saws':
      return counted('saw_trees', facts.sawTrees)
    case 'minors':
      return counted('minors', facts.minors)
    case 'keep_out':
      return hazards(facts, (sign) => sign !== 'power_line' && sign !== 'nest')
    case 'lines':
      return hazards(facts, (sign) => sign === 'power_line')
    case 'nests':
      return hazards(facts, (sign) => sign === 'nest')
    case 'slope':
      return []
    case 'wet':
      return offs(facts, (_, because) => because === 'rain' || because === 'wet_wood')
    case 'heat':
      return [
        ...offs(facts, (_, because) => because === 'heat'),
        ...(facts.heat.isWave ? [{ kind: 'heat_wave' } as const] : []),
        ...counted('new_in_heat', facts.heat.newPeople),
        ...ofRound(facts, 'summer'),
      ]
    case 'cold':
      return ofRound(facts, 'winter')
    case 'wind':
      return offs(facts, (_, because) => because === 'wind')
    case 'thunder':
      return offs(facts, (_, because) => because === 'thunder')
    case 'disease':
      return facts.diseased.map((of) => ({ kind: 'disease', ...of }))
  }
}

function offs({ off }: ShiftFacts, isMeant: (what: string, because: string) => boolean): Reason[] {
  return Object.entries(off)
    .filter(([what, because]) => isMeant(what, because))
    .map(([what, because]) => ({ kind: 'off', what, because }))
}

type Counted = Extract<Reason, { count: number }>['kind']

function counted(kind: Counted, count: number): Reason[] {
  return count > 0 ? [{ kind, count }] : []
}

/** One reason a sign, with all its trees. */
function hazards(facts: ShiftFacts, isMeant: (sign: string) => boolean): Reason[] {
  const signs = [...new Set(facts.hazards.map(({ sign }) => sign))].filter(isMeant)
  return signs.map((sign) => ({
    kind: 'hazard',
    sign,
    trees: facts.hazards.filter((flag) => flag.sign === sign).map(({ tree }) => tree),
  }))
}

/** By the kind of round alone, common practice, no source; the weather itself is asked for. */
function ofRound({ round }: ShiftFacts, kind: 'summer' | 'winter'): Reason[] {
  return round === kind ? [{ kind: 'round', round }] : []
}

/** 80 °F, from where Cal. Code Regs. Title 8 §3395 asks for shade to be up. */
export const shadeFromC = 26.7
/** Common practice, no source: hands are slow and bark is slippery. */
export const coldBelowC = 5
/** Beaufort 5, small trees sway (NWS, from 19 mph): no ladders. That it is a limit is common practice. */
export const gustsFromKmPerH = 30

/** Asked where nothing proposes them; yes takes the topic in. */
export const questions = [
  'slope',
  'nests',
  'lines',
  'heat',
  'cold',
  'wind',
  'thunder',
  'wet',
] as const satisfies readonly TopicCode[]
export type Question = (typeof questions)[number]
