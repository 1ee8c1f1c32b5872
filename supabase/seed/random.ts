/** Chance that comes out the same on every machine for the same seed. */

import { chanceFrom } from '@/lib/util/chance'

export type Random = {
  /** From 0 up to 1. */
  share: () => number
  /** How often of a hundred times. */
  percent: (chance: number) => boolean
  /** Null from an empty list. */
  pick: <Item>(items: readonly Item[]) => Item | null
}

export function randomFrom(seed: number): Random {
  const share = chanceFrom(seed)
  return {
    share,
    percent: (chance) => share() * 100 < chance,
    pick: (items) => items[Math.floor(share() * items.length)] ?? null,
  }
}
