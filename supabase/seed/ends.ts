/** How `npm run bring-in` ends, as its exit code. */

import type { Print } from './terminal'

export const ends = { allIn: 0, rowsWrong: 1, missing: 2, notLetIn: 3, noAnswer: 4 } as const
export type End = (typeof ends)[keyof typeof ends]

export function said(print: Print, sentence: string, end: End): End {
  print(sentence)
  return end
}
