/** Which parts of the day are printed. */

export const paperParts = [
  'cover',
  'maps',
  'steps',
  'trees',
  'people',
  'leads',
  'tools',
  'briefing',
  'referrals',
  'lines',
] as const
export type PaperPart = (typeof paperParts)[number]

export type PaperChoice = {
  parts: readonly PaperPart[]
  /** A block that is brought in later is printed, too. */
  withoutBlocks: readonly number[]
  onlyLeft: boolean
  /** The orchard's own picture under the maps. */
  picture: boolean
}

export const firstChoice: PaperChoice = {
  parts: paperParts,
  withoutBlocks: [],
  onlyLeft: false,
  picture: false,
}

export function toggled<Item>(list: readonly Item[], item: Item): Item[] {
  return list.includes(item) ? list.filter((one) => one !== item) : [...list, item]
}
