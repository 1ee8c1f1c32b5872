/** What is still open when a shift is about to close, and why it stays so. */

import type { State } from '@/lib/events/state'

/** The names of the three lists are those of the command. */
export type Whys = Record<LeftKind, Record<string, string>>
export type LeftKind = 'people' | 'claims' | 'tools'

export const noWhys: Whys = { people: {}, claims: {}, tools: {} }

export type Left = Record<LeftKind, readonly string[]>

/** Everybody not counted out, every claim, every tool in a hand. */
export function leftOpen(state: State): Left {
  return {
    people: Object.keys(state.attendance),
    claims: Object.keys(state.claims),
    tools: Object.keys(state.tools).filter((no) => state.tools[no]?.heldBy !== null),
  }
}

/** Who closes the shift is still there to do it, so that needs no asking. */
export function withMe(whys: Whys, me: string, left: Left, closing: string): Whys {
  if (!left.people.includes(me) || whys.people[me] !== undefined) return whys
  return { ...whys, people: { ...whys.people, [me]: closing } }
}

/** Only what is still open now; what was closed meanwhile needs no reason any more. */
export function whysFor(left: Left, whys: Whys): Whys {
  const kept = (kind: LeftKind) =>
    Object.fromEntries(
      left[kind].flatMap((id) => {
        const why = whys[kind][id]?.trim()
        return why ? [[id, why] as const] : []
      })
    )
  return { people: kept('people'), claims: kept('claims'), tools: kept('tools') }
}

/** A closing shift leaves every held tree begun; of these a lead knows better, and says so first. */
export function putDownFirst(
  left: Left,
  whys: Whys,
  words: { finished: string; notBegun: string }
): { claim: string; isFinished: boolean }[] {
  const said = (why: string) => left.claims.filter((id) => whys.claims[id] === why)
  return [
    ...said(words.finished).map((claim) => ({ claim, isFinished: true })),
    ...said(words.notBegun).map((claim) => ({ claim, isFinished: false })),
  ]
}

export function countWithoutWhy(left: Left, whys: Whys): number {
  const said = whysFor(left, whys)
  const kinds: readonly LeftKind[] = ['people', 'claims', 'tools']
  return kinds.reduce((sum, kind) => sum + left[kind].length - Object.keys(said[kind]).length, 0)
}

/** Whom nobody found: of those who are not signed out, the ones of whom a lead says so. */
export function lookedFor(left: Left, whys: Whys, word: string): string[] {
  return left.people.filter((id) => whys.people[id] === word)
}
