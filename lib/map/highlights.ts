import type { Picture } from './paint'

/** What stands out of the picture, or steps back in it. `called`: the next tree, the one that steps forward. */
export type Highlights = Pick<
  Picture,
  'selected' | 'dimmed' | 'long' | 'called' | 'keepOuts' | 'disease' | 'me' | 'aerial' | 'hasGaps'
>

const none: ReadonlySet<number> = new Set()
export const plainPicture: Highlights = {
  selected: none,
  dimmed: none,
  long: none,
  called: null,
  keepOuts: [],
  disease: null,
  me: null,
  aerial: null,
  hasGaps: false,
}
