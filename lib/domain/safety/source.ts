/** Where a rule of safety comes from, to be shown beside it. */
export type Source =
  | { kind: 'published'; name: string }
  /** What the trade does, without a paper to point to. */
  | { kind: 'common_practice' }
  /** This orchard's own setting. */
  | { kind: 'house_rule' }

export const commonPractice: Source = { kind: 'common_practice' }
export const houseRule: Source = { kind: 'house_rule' }

export function published(name: string): Source {
  return { kind: 'published', name }
}
