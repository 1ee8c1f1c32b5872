/** Why something was refused, in a sentence that begins with what happened and ends with the way on. */

import type { Refusal } from '@/lib/events/answer'
import { formatList } from './list'
import type { Messages } from './messages'
import { speciesWords } from './species'

/** The parts of the messages that say why. */
type RefusalText = Pick<Messages, 'refusals' | 'errors'>

export type RefusalCode = keyof Messages['refusals']

/** What the sentence may name, already in words a person reads ("S 7·14", "Inés", "9:40"). */
export type RefusalDetail = {
  tree?: string | undefined
  trees?: string | undefined
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

/** Turns what the referee names by number or id into what a person reads. */
export type Naming = {
  tree: (no: number) => string
  person: (id: string) => string
  tool: (no: number) => string
  whose?: string | undefined
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

/** One refusal of the referee, as it came, in a sentence. */
export function refusalInWords(
  text: Messages,
  { code, detail = {} }: Refusal,
  naming: Naming
): string {
  return refusalSentence(text, code, readable(text, detail, naming))
}

/** A detail comes from the server of another day: what is not of the kind we know is not named. */
function readable(text: Messages, detail: Record<string, unknown>, naming: Naming): RefusalDetail {
  const { skill, offReason } = text.things
  const trees = numbersIn(detail.trees ?? detail.tree).map(naming.tree)
  const people = wordsIn(detail.people ?? detail.person).map(naming.person)
  const tools = numbersIn(detail.tools ?? detail.tool).map(naming.tool)
  return {
    tree: formatList(text, trees),
    trees: formatList(text, trees),
    person: formatList(text, people),
    tool: formatList(text, tools),
    skill: wordFor(skill, detail.skill),
    reason: wordFor(offReason, detail.reason),
    species:
      typeof detail.species === 'string' ? speciesWords(text, detail.species).many : undefined,
    whose: naming.whose,
    take: naming.take,
  }
}

function isKnown(text: RefusalText, code: string): code is RefusalCode {
  return Object.hasOwn(text.refusals, code)
}

function wordFor(words: Record<string, string>, code: unknown): string | undefined {
  return typeof code === 'string' && Object.hasOwn(words, code) ? words[code] : undefined
}

function numbersIn(value: unknown): number[] {
  return [value].flat().filter((one) => typeof one === 'number')
}

function wordsIn(value: unknown): string[] {
  return [value].flat().filter((one) => typeof one === 'string')
}
