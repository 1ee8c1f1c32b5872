/** A refusal of the referee in a sentence: ids become names, numbers become tags. */

import type { Refusal } from '@/lib/events/answer'
import type { Messages } from '@/lib/text/messages'
import { type RefusalDetail, refusalSentence } from '@/lib/text/refusal'
import { speciesWords } from '@/lib/text/species'

/** Turns what the referee names by number or id into what a person reads. */
export type Naming = {
  tree: (no: number) => string
  person: (id: string) => string
  tool: (no: number) => string
  /** The code of a block, "S". */
  block: (no: number) => string
  /** A time on the orchard's clock. */
  clock: (at: Date) => string
  /** Whose work it is, where that is not the reader. */
  whose?: string | undefined
}

/** What was asked for, and what to take instead. */
export type RefusalAbout = { tree?: number | undefined; take?: number | undefined }

/** Their detail names the other tree: the hazard, or the ladder, that is too close to this one. */
const namesNeighbour = ['inside_keep_out', 'works_next_to_it']

export function refusalWords(
  words: Messages,
  { code, detail = {} }: Refusal,
  naming: Naming,
  { tree, take }: RefusalAbout = {}
): string {
  const row = rowIn(detail.row)
  // What is about a whole row is not about the tree that was asked for.
  const named = numbersIn(detail.tree)[0] ?? (row ? undefined : tree)
  const about = namesNeighbour.includes(code) ? tree : named
  return refusalSentence(words, code, {
    ...readable(words, detail, naming),
    ...(row && { row: words.brush.row(naming.block(row.block), row.row) }),
    ...(about !== undefined && { tree: naming.tree(about) }),
    ...(take !== undefined && { take: naming.tree(take) }),
  })
}

/** A detail comes from the server of another day: what is not of the kind we know is not named. */
function readable(words: Messages, detail: Record<string, unknown>, naming: Naming): RefusalDetail {
  const { skill, offReason } = words.things
  return {
    trees: listed(numbersIn(detail.trees).map(naming.tree)),
    person: listed(textsIn(detail.people ?? detail.person).map(naming.person)),
    tool: listed(numbersIn(detail.tools ?? detail.tool).map(naming.tool)),
    skill: wordFor(skill, detail.skill),
    reason: wordFor(offReason, detail.reason),
    species: textsIn(detail.species).map((kind) => speciesWords(words, kind).many)[0],
    until: textsIn(detail.until).map((at) => naming.clock(new Date(at)))[0],
    whose: naming.whose,
  }
}

function rowIn(value: unknown): { block: number; row: number } | null {
  const { block, row } = Object(value) as { block?: unknown; row?: unknown }
  return typeof block === 'number' && typeof row === 'number' ? { block, row } : null
}

const mostShown = 4

function listed(things: readonly string[]): string | undefined {
  if (things.length === 0) return undefined
  return things.slice(0, mostShown).join(', ') + (things.length > mostShown ? ' …' : '')
}

function wordFor(dictionary: Record<string, string>, code: unknown): string | undefined {
  return typeof code === 'string' && Object.hasOwn(dictionary, code) ? dictionary[code] : undefined
}

function numbersIn(value: unknown): number[] {
  return [value].flat().filter((one) => typeof one === 'number')
}

function textsIn(value: unknown): string[] {
  return [value].flat().filter((one) => typeof one === 'string')
}
