/**
 * The numbers that an orchard sets for itself: what is usual, and between what they may lie. The referee has
 * the same numbers (private.default_house_rules, private.house_rule_range); a test compares them. None of them
 * has a published source: references that were looked at give a range or nothing, so the usual value lies on
 * the cautious side of it. Local rules win.
 */

export type HouseRule = {
  key: string
  unit: 'cm' | 'm' | 'min'
  usual: number
  least: number
  most: number
  /** What is more cautious, so that a converted number is rounded that way. */
  cautious: 'more' | 'less' | 'either'
}

export const houseRules = [
  { key: 'ladder_from_cm', unit: 'cm', usual: 250, least: 100, most: 400, cautious: 'less' },
  // Seen in general references: 3 to 4 inches; never thicker than 4.
  { key: 'limb_cm', unit: 'cm', usual: 10, least: 2, most: 10, cautious: 'less' },
  { key: 'keep_out_m', unit: 'm', usual: 10, least: 3, most: 200, cautious: 'more' },
  { key: 'overhead_apart_m', unit: 'm', usual: 6, least: 3, most: 50, cautious: 'more' },
  { key: 'quiet_minutes', unit: 'min', usual: 15, least: 2, most: 120, cautious: 'less' },
  { key: 'withdraw_minutes', unit: 'min', usual: 2, least: 0, most: 60, cautious: 'either' },
  { key: 'undo_minutes', unit: 'min', usual: 10, least: 0, most: 60, cautious: 'either' },
] as const satisfies readonly HouseRule[]

export type HouseRuleKey = (typeof houseRules)[number]['key']

/** The orchard's own number, else the usual one. */
export function houseRuleOf(set: Readonly<Record<string, number>>, key: HouseRuleKey): number {
  return set[key] ?? houseRules.find((rule) => rule.key === key)?.usual ?? 0
}
