/**
 * What makes a tree or a limb the licensed arborist's: each rule with where it comes from and how far that
 * may be trusted. Any one is enough, nothing is averaged. Local rules win.
 */

import type { Trust } from '../pruning/fact'
import { lineLimitM } from './power-line'
import { commonPractice, houseRule, published, type Source } from './source'

/** What a rule wants to know, and the name of the reason when it says no. */
export const referCodes = [
  'hanging_limb',
  'crack',
  'line_near',
  'leaning_fresh',
  'nest',
  'something_else',
  'limb_thick',
  'too_high',
  'shell_thin',
  'conks',
  'canker_wide',
  'metal_in_wood',
  'leaning_far',
  'dead_tree',
  'dead_limb',
  'over_road_or_house',
] as const
export type ReferCode = (typeof referCodes)[number]

export type Limit =
  /** It is there, or it is not. */
  | { kind: 'seen' }
  /** More is the arborist's. */
  | { kind: 'most'; value: number; unit: 'cm' | 'degrees' | 'share' }
  /** Less is the arborist's. */
  | { kind: 'least'; value: number; unit: 'm' | 'share' }
  /** What decides is not known, so that no measure can be enough. */
  | { kind: 'never_enough' }

export type ReferRule = { code: ReferCode; limit: Limit; source: Source; mark: Trust }

export type ReferSettings = {
  /** The orchard's own rule: thicker limbs are the arborist's. */
  limbCm: number
  /** Where somebody's feet may be at most, on a ladder. */
  feetCm: number
  /** A trunk that leans further is the arborist's. */
  leanDeg: number
  /** Null: nobody knows which line it is. */
  lineKv: number | null
}

const seen: Limit = { kind: 'seen' }
const riskChecklist = published('ISA tree risk checklist')
const forestService = published('USDA Forest Service, hazard tree guides')

export function referRules({ limbCm, feetCm, leanDeg, lineKv }: ReferSettings): ReferRule[] {
  return [
    { code: 'hanging_limb', limit: seen, source: riskChecklist, mark: 'second_hand' },
    { code: 'crack', limit: seen, source: forestService, mark: 'from_memory' },
    lineRule(lineKv),
    { code: 'leaning_fresh', limit: seen, source: commonPractice, mark: 'second_hand' },
    { code: 'nest', limit: seen, source: commonPractice, mark: 'practice' },
    { code: 'something_else', limit: seen, source: commonPractice, mark: 'practice' },
    // 3 to 4 inches; a limb too heavy to hold is refused by its weight as well.
    {
      code: 'limb_thick',
      limit: { kind: 'most', value: limbCm, unit: 'cm' },
      source: houseRule,
      mark: 'practice',
    },
    {
      code: 'too_high',
      limit: { kind: 'most', value: feetCm, unit: 'cm' },
      source: houseRule,
      mark: 'practice',
    },
    // Two rules for the same hollow: the stricter decides, since either is enough. PMC5414253 has the change
    // from bending to cracking at 0.27.
    {
      code: 'shell_thin',
      limit: { kind: 'least', value: 0.3, unit: 'share' },
      source: published('Mattheck, t/R 0.30'),
      mark: 'from_memory',
    },
    {
      code: 'shell_thin',
      limit: { kind: 'least', value: 1 / 3, unit: 'share' },
      source: published('USDA Forest Service and Minnesota DNR, 1 in of sound wood per 6 in'),
      mark: 'from_memory',
    },
    { code: 'conks', limit: seen, source: commonPractice, mark: 'second_hand' },
    {
      code: 'canker_wide',
      limit: { kind: 'most', value: 1 / 3, unit: 'share' },
      source: commonPractice,
      mark: 'second_hand',
    },
    { code: 'metal_in_wood', limit: seen, source: commonPractice, mark: 'practice' },
    // No public guide prints 15 degrees.
    {
      code: 'leaning_far',
      limit: { kind: 'most', value: leanDeg, unit: 'degrees' },
      source: houseRule,
      mark: 'practice',
    },
    {
      code: 'dead_tree',
      limit: seen,
      source: published('USDA Forest Service, Region 2'),
      mark: 'read',
    },
    {
      code: 'dead_limb',
      limit: { kind: 'most', value: 5, unit: 'cm' },
      source: commonPractice,
      mark: 'not_confirmed',
    },
    { code: 'over_road_or_house', limit: seen, source: commonPractice, mark: 'second_hand' },
  ]
}

function lineRule(kv: number | null): ReferRule {
  if (kv === null)
    return {
      code: 'line_near',
      limit: { kind: 'never_enough' },
      source: commonPractice,
      mark: 'practice',
    }
  return {
    code: 'line_near',
    limit: { kind: 'least', value: lineLimitM(kv), unit: 'm' },
    source: published('29 CFR 1910.269(x)'),
    mark: 'read',
  }
}
