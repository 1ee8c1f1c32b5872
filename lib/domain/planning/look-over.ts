/**
 * Which finished trees a lead looks over first. Fair and not to be foreseen: one of everybody of whom
 * nothing was looked over in this round, whoever is newest first, then some drawn by lot.
 */

export type FinishedTree = { tree: number; people: readonly string[] }
export type Pruner = { since: string; lookedOver: number }

export type Proposal = { tree: number; because: { firstOf: string } | 'drawn' }

/** One in so many is drawn besides. Common practice, no source. */
const drawnOneIn = 5

export function treesToLookOver(
  finished: readonly FinishedTree[],
  people: Readonly<Record<string, Pruner>>,
  seed: string
): Proposal[] {
  const byLot = finished
    .map((one) => ({ ...one, lot: lotOf(`${seed}:${one.tree}`) }))
    .toSorted((a, b) => a.lot - b.lot)
  const proposed = new Map<number, Proposal>()

  for (const person of unseenNewestFirst(people)) {
    const theirs = byLot.filter((one) => one.people.includes(person))
    // A tree of a pair stands for both.
    const first = theirs.some(({ tree }) => proposed.has(tree)) ? undefined : theirs[0]
    if (first) proposed.set(first.tree, { tree: first.tree, because: { firstOf: person } })
  }
  for (const { tree, lot } of byLot) {
    if (lot % drawnOneIn === 0 && !proposed.has(tree)) {
      proposed.set(tree, { tree, because: 'drawn' })
    }
  }
  return [...proposed.values()]
}

function unseenNewestFirst(people: Readonly<Record<string, Pruner>>): string[] {
  return Object.entries(people)
    .filter(([, { lookedOver }]) => lookedOver === 0)
    .toSorted(([, a], [, b]) => b.since.localeCompare(a.since))
    .map(([id]) => id)
}

/** FNV-1a: the same for the same words on every device. */
function lotOf(words: string): number {
  let lot = 0x811c9dc5
  for (const letter of words) lot = Math.imul(lot ^ (letter.codePointAt(0) ?? 0), 0x01000193)
  return lot >>> 0
}
