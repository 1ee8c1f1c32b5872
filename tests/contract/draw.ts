/** What somebody might do, drawn by numbers from what a lead knows. */

import type { CommandName } from '@/lib/events/commands'
import type { State } from '@/lib/events/state'
import { ground, treeNumbers } from './ground'

/**
 * Choices made by a list of numbers, so that the same numbers tell the same story: ids are new each
 * time, so they are taken in the order in which they came up.
 */
export class Draw {
  private next = 0
  constructor(
    private readonly numbers: readonly number[],
    private readonly cameUp: ReadonlyMap<unknown, number>
  ) {}

  number(below: number): number {
    const drawn = this.numbers[this.next++ % this.numbers.length] ?? 0
    return drawn % below
  }

  chance(oneIn: number): boolean {
    return this.number(oneIn) === 0
  }

  of<Item>(items: readonly Item[]): Item | undefined {
    const place = (item: Item) => this.cameUp.get(item) ?? 0
    const inOrder = items.toSorted((a, b) => place(a) - place(b))
    return inOrder.length === 0 ? undefined : inOrder[this.number(inOrder.length)]
  }
}

export type Situation = { state: State; personId: string; draw: Draw }
/** Null: there is nothing to do it to. */
export type Drawn = Record<string, unknown> | null
export type Moves = Partial<Record<CommandName, (situation: Situation) => Drawn>>

export function some(
  key: string,
  id: string | undefined,
  more: Record<string, unknown> = {}
): Drawn {
  return id === undefined ? null : { [key]: id, ...more }
}

export function anybody(state: State, draw: Draw): string {
  return draw.of(Object.keys(state.people)) ?? state.me.personId
}

export function aTree(draw: Draw): number {
  return draw.of(treeNumbers) ?? 1
}

export function aTool(state: State, draw: Draw): number {
  return Number(draw.of(Object.keys(state.tools)) ?? 1)
}

const rows = [
  { block: 1, row: 1 },
  { block: 1, row: 2 },
  { block: 2, row: 1 },
]

export function aRow(draw: Draw): { block: number; row: number } {
  return rows[draw.number(rows.length)] ?? { block: 1, row: 1 }
}

export function treesIn({ block, row }: { block: number; row: number }): number[] {
  return [...ground.trees.values()]
    .filter((tree) => tree.block === block && tree.row === row)
    .map(({ no }) => no)
}
