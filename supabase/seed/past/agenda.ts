/** What happened when in the demo's past: the earliest step first, and each may plan others. */

import { randomUUID } from 'node:crypto'

import type { ArgsOf, CommandName } from '@/lib/events/commands'

import { mustSend, type Seat } from '../referee'

type Step = { atMs: number; run: () => Promise<void> }

const secondMs = 1000

export class Agenda {
  /** When each command was meant, by its id: the referee only knows its own clock. */
  readonly meant = new Map<string, Date>()
  private readonly steps: Step[] = []
  private nowMs = 0

  plan(at: Date, run: Step['run']): void {
    const atMs = at.getTime()
    const place = this.steps.findIndex((other) => other.atMs > atMs)
    this.steps.splice(place < 0 ? this.steps.length : place, 0, { atMs, run })
  }

  async run(): Promise<void> {
    for (let next = this.steps.shift(); next; next = this.steps.shift()) {
      this.nowMs = Math.max(this.nowMs, next.atMs)
      await next.run()
    }
  }

  now(): Date {
    return new Date(this.nowMs)
  }

  inMinutes(minutes: number): Date {
    return new Date(this.nowMs + minutes * 60 * secondMs)
  }

  /** Within a step. */
  pass(minutes: number): void {
    this.nowMs += minutes * 60 * secondMs
  }

  /** Each a moment after the one before, so that times are in order like numbers. */
  async must<Name extends CommandName>(
    seat: Seat,
    name: Name,
    args: ArgsOf<Name>,
    id: string = randomUUID()
  ): Promise<void> {
    this.nowMs += secondMs
    this.meant.set(id, this.now())
    await mustSend(seat, name, args, id)
  }
}
