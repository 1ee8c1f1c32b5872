/** Why something was refused, in a sentence that begins with what happened and ends with the way on. */

import type { Messages } from './messages'

/** The parts of the messages that say why. */
type RefusalText = Pick<Messages, 'refusals' | 'errors'>

export type RefusalCode = keyof Messages['refusals']

/** What the sentence may name, already in words a person reads ("S 7·14", "Inés", "9:40"). */
export type RefusalDetail = {
  tree?: string | undefined
  trees?: string | undefined
  /** "row S 7" */
  row?: string | undefined
  /** Somebody else it is about: who holds the tree, who is missing. */
  person?: string | undefined
  /** Whose work it is, where that is not the reader. */
  whose?: string | undefined
  species?: string | undefined
  skill?: string | undefined
  tool?: string | undefined
  until?: string | undefined
  reason?: string | undefined
  /** The tree to take instead. */
  take?: string | undefined
}

/** A code of a newer server than this page gets the sentence for the unknown, and its code to tell. */
export function refusalSentence(
  text: RefusalText,
  code: string,
  detail: RefusalDetail = {}
): string {
  return isKnown(text, code) ? text.refusals[code](detail) : text.errors.refusedUnknown(code)
}

function isKnown(text: RefusalText, code: string): code is RefusalCode {
  return Object.hasOwn(text.refusals, code)
}
