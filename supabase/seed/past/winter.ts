/** What the parts of last winter share, and how they find people and trees. */

import type { Tree } from '@/lib/domain/orchard/types'
import type { DateOnly } from '@/lib/events/state'

import { type Orchard, seatOf } from '../demo-orchard'
import type { Random } from '../random'
import type { Seat } from '../referee'
import type { Agenda } from './agenda'
import { type PastShift, type PastWorker, pastWorkers } from './plan'

export type Winter = {
  orchard: Orchard
  agenda: Agenda
  random: Random
  round: string
  species: readonly string[]
  /** "09:40" of that day on the orchard's clock. */
  at: (day: DateOnly, clock: string) => Date
  /** Gives what has happened so far its times. */
  settle: () => Promise<void>
  /** By whom each tree was finished last. */
  done: Map<number, string>
  /** Half done or opened again: takes less the second time. */
  begun: Set<number>
  held: Set<number>
  resting: Set<string>
  consented: Set<string>
  /** By tree. */
  flags: Map<number, string>
}

export type Day = {
  winter: Winter
  plan: PastShift
  date: DateOnly
  shift: string
  workers: readonly PastWorker[]
  clock: (time: string) => Date
  /** Opened again: for whoever finished it, before anything else. */
  again: Map<string, number[]>
  finished: number[]
  lookedOver: Set<number>
  /** Labels of what each has in hand. */
  tools: Map<string, string[]>
}

export function dayOf(winter: Winter, plan: PastShift, whose: Pick<Day, 'date' | 'shift'>): Day {
  return {
    ...whose,
    winter,
    plan,
    workers: pastWorkers.filter(({ name }) => !plan.missing.includes(name)),
    clock: (time) => winter.at(whose.date, time),
    again: new Map(),
    finished: [],
    lookedOver: new Set(),
    tools: new Map(),
  }
}

export function seatIn({ orchard }: Winter, name: string): Seat {
  return seatOf(orchard.seats, name)
}

export function treeOf({ orchard }: Winter, no: number): Tree {
  const tree = orchard.land.rules.trees.get(no)
  if (!tree) throw new Error(`The demo has no tree ${no}.`)
  return tree
}

/** Everybody who works that day, with those who come along. */
export function crewOf({ workers }: Day): string[] {
  return [
    ...new Set(workers.flatMap(({ name, with: other }) => (other ? [name, other.name] : [name]))),
  ]
}
