/** Chance that comes out the same on every machine for the same seed. */

export type Random = {
  /** From 0 up to 1. */
  share: () => number
  /** How often of a hundred times. */
  percent: (chance: number) => boolean
  /** Null from an empty list. */
  pick: <Item>(items: readonly Item[]) => Item | null
}

export function randomFrom(seed: number): Random {
  const share = mulberry32(seed)
  return {
    share,
    percent: (chance) => share() * 100 < chance,
    pick: (items) => items[Math.floor(share() * items.length)] ?? null,
  }
}

/** Small, and the same everywhere. */
function mulberry32(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
