/** A person of the past at work: tree after tree, a rest in the middle, the last one perhaps half done. */

import { randomUUID } from 'node:crypto'

import type { Tree } from '@/lib/domain/orchard/types'
import type { ArgsOf, CommandName } from '@/lib/events/commands'

import { minutesFor } from './minutes'
import { halfDoneNotes, hours, type PastWorker, restMin, walkMin } from './plan'
import { nextOf } from './trees'
import { type Day, seatIn } from './winter'

/** Nobody begins a tree in less. */
const leastMin = 10

export class WorkingDay {
  private at: Tree | null = null
  private isRested = false

  constructor(
    private readonly day: Day,
    private readonly worker: PastWorker
  ) {}

  beginAt(time: Date): void {
    this.day.winter.agenda.plan(time, () => this.goOn())
  }

  private async goOn(): Promise<void> {
    const { agenda } = this.day.winter
    if (!this.isRested && agenda.now() >= this.day.clock(hours.rest)) return this.rest()
    const leftMin = (this.day.clock(hours.brush).getTime() - agenda.now().getTime()) / 60_000
    if (leftMin < leastMin) return
    const tree = nextOf(this.day, this.worker, this.at)
    if (tree) return this.prune(tree, leftMin)
    // Somebody is at the neighbour: look again in a while.
    this.later(leastMin, () => this.goOn())
  }

  private async rest(): Promise<void> {
    this.isRested = true
    const { resting } = this.day.winter
    await this.send('start_break', {})
    resting.add(this.worker.name)
    this.later(restMin, async () => {
      await this.send('end_break', {})
      resting.delete(this.worker.name)
      await this.goOn()
    })
  }

  private async prune(tree: Tree, leftMin: number): Promise<void> {
    const { begun, held, random } = this.day.winter
    const work = { claim: randomUUID(), tree: tree.no }
    await this.send('claim_tree', { tree: tree.no, ...this.company(tree) }, work.claim)
    held.add(tree.no)
    const isBegun = begun.delete(tree.no)
    const neededMin = minutesFor(tree, this.worker.pace, random) * (isBegun ? 0.4 : 1)
    this.later(Math.min(neededMin, leftMin), async () => {
      held.delete(tree.no)
      if (neededMin <= leftMin) await this.finish(work)
      else await this.leaveHalfDone(work, leftMin / neededMin)
      this.at = tree
      this.later(walkMin, () => this.goOn())
    })
  }

  private async finish(work: { claim: string; tree: number }): Promise<void> {
    await this.send('finish_tree', work)
    this.day.winter.done.set(work.tree, this.worker.name)
    this.day.finished.push(work.tree)
  }

  private async leaveHalfDone(work: { claim: string; tree: number }, done: number): Promise<void> {
    const { begun, random } = this.day.winter
    const share = Math.min(90, Math.max(10, Math.round(done * 10) * 10))
    await this.send('release_tree', { ...work, share, note: random.pick(halfDoneNotes) })
    begun.add(work.tree)
  }

  private later(minutes: number, run: () => Promise<void>): void {
    const { agenda } = this.day.winter
    agenda.plan(agenda.inMinutes(minutes), run)
  }

  private async send<Name extends CommandName>(name: Name, args: ArgsOf<Name>, id?: string) {
    await this.day.winter.agenda.must(seatIn(this.day.winter, this.worker.name), name, args, id)
  }

  private company(tree: Tree) {
    const { with: other } = this.worker
    if (!other) return {}
    const { personId } = seatIn(this.day.winter, other.name)
    if (other.part === 'buddy') return tree.asksSaw ? { buddy: personId } : {}
    return { [other.part]: [personId] }
  }
}
