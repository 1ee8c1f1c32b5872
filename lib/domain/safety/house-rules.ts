/**
 * The numbers that an orchard sets for itself: what is usual, and between what they may lie. The referee has
 * the same numbers (private.default_house_rules, private.house_rule_range); a test compares them. Where
 * references that were looked at give a range or nothing, the usual value lies on the cautious side of it. Local
 * rules win.
 */

import { type CleaningPolicy, cleaningPolicies } from '../disease/sanitation'
import { weatherRules } from './weather-rules'

export type HouseRule = {
  key: string
  unit: 'cm' | 'm' | 'min' | 'choice' | 'km/h' | '°C' | 'h' | 'd' | 'month' | '°'
  usual: number
  least: number
  most: number
  /** What is more cautious, so that a converted number is rounded that way. */
  cautious: 'more' | 'less' | 'either'
  /** What may be chosen, where it is no number: the value is its place in the list, from 1. */
  choices?: readonly string[]
}

export const houseRules = [
  { key: 'ladder_from_cm', unit: 'cm', usual: 250, least: 100, most: 400, cautious: 'less' },
  // Seen in general references: 3 to 4 inches; never thicker than 4.
  { key: 'limb_cm', unit: 'cm', usual: 10, least: 2, most: 10, cautious: 'less' },
  // Seen in general references: 1/2 to 3/4 inch, and 1 1/2 to 2 inches.
  { key: 'pruner_cm', unit: 'cm', usual: 1.905, least: 1.27, most: 1.905, cautious: 'less' },
  { key: 'lopper_cm', unit: 'cm', usual: 3.81, least: 2.54, most: 5.08, cautious: 'less' },
  // Seen in general references: up to an inch.
  { key: 'pole_cm', unit: 'cm', usual: 2.54, least: 1.27, most: 2.54, cautious: 'less' },
  // Sources differ: 6 to 24 inches out, 1 to 2 further. Neither is more cautious: a longer stub is heavier.
  {
    key: 'three_cut_out_cm',
    unit: 'cm',
    usual: 30.48,
    least: 15.24,
    most: 60.96,
    cautious: 'either',
  },
  {
    key: 'three_cut_further_cm',
    unit: 'cm',
    usual: 5.08,
    least: 2.54,
    most: 5.08,
    cautious: 'either',
  },
  // Not published: 6 feet. A nonprofit group of tree people bars ladders altogether: 0.
  { key: 'feet_cm', unit: 'cm', usual: 183, least: 0, most: 183, cautious: 'less' },
  // No public guide prints 15 degrees; an orchard may be stricter, never milder.
  { key: 'lean_deg', unit: '°', usual: 15, least: 5, most: 15, cautious: 'less' },
  // Where the sources differ, the first is what asks for most.
  {
    key: 'clean_tools',
    unit: 'choice',
    usual: 1,
    least: 1,
    most: 3,
    cautious: 'less',
    choices: cleaningPolicies,
  },
  { key: 'keep_out_m', unit: 'm', usual: 10, least: 3, most: 200, cautious: 'more' },
  { key: 'overhead_apart_m', unit: 'm', usual: 6, least: 3, most: 50, cautious: 'more' },
  { key: 'quiet_minutes', unit: 'min', usual: 15, least: 2, most: 120, cautious: 'less' },
  { key: 'withdraw_minutes', unit: 'min', usual: 2, least: 0, most: 60, cautious: 'either' },
  { key: 'undo_minutes', unit: 'min', usual: 10, least: 0, most: 60, cautious: 'either' },
  ...weatherRules,
] as const satisfies readonly HouseRule[]

export type HouseRuleKey = (typeof houseRules)[number]['key']

/** When a tool is cleaned in a sick tree. A number of a newer app means the usual one. */
export function cleaningPolicyOf(set: Readonly<Record<string, number>>): CleaningPolicy {
  return cleaningPolicies[houseRuleOf(set, 'clean_tools') - 1] ?? cleaningPolicies[0]
}

/** The orchard's own number, else the usual one. */
export function houseRuleOf(set: Readonly<Record<string, number>>, key: HouseRuleKey): number {
  return set[key] ?? houseRules.find((rule) => rule.key === key)?.usual ?? 0
}
