/** A simulated crew works the open shift, goes home, and what must be true is checked. */

import { setTimeout as pause } from 'node:timers/promises'

import type { BackendAddress } from '@/lib/data/client'
import { isRefused } from '@/lib/events/answer'
import { claimOf, openShift, toolsOf } from '@/lib/events/look-ups'
import type { State } from '@/lib/events/state'

import { type Check, checkAll, quarrelsIn } from './crew-checks'
import { lead } from './crew-lead'
import { lineFrom } from './crew-line'
import { act, holding, type Sim } from './crew-person'
import type { CrewPhone } from './crew-phone'
import { type Crew, gatherCrew } from './crew-setup'
import { randomFrom } from './random'
import type { Print } from './terminal'

export type CrewRun = {
  link: string
  people: number
  seed: number
  /** When everybody goes home: after so long, or after so many steps each. */
  minutes: number
  steps?: number
  /** Between two steps of a person, on average. */
  paceMs: number
}

export async function runCrew(
  backend: BackendAddress,
  run: CrewRun,
  print: Print
): Promise<Check[]> {
  const complaints: string[] = []
  const quarrels: string[] = []
  const each = (state: State) => quarrels.push(...quarrelsIn(state))
  const crew = await gatherCrew(backend, run.link, { ...run, each })
  try {
    const line = lineFrom(crew.manager, crew.manager.state())
    const sims = simsOf(crew, run.seed, complaints)
    const until = Date.now() + run.minutes * 60_000
    const { steps = Number.POSITIVE_INFINITY } = run
    await Promise.all([...sims.map((sim) => work(sim, until, steps)), leadOn(until, steps)])
    for (const sim of sims) await goHome(sim)
    print(`\n${summaryOf([crew.manager, ...crew.phones])}`)
    return await checkAll(crew, { line, quarrels, complaints })

    async function work(sim: Sim, end: number, left: number): Promise<void> {
      for (let step = 0; step < left && Date.now() < end; step++) {
        print(`${sim.phone.name} ${await act(sim)}`)
        await pause(run.paceMs * (0.5 + sim.random.share()))
      }
    }

    async function leadOn(end: number, left: number): Promise<void> {
      const random = randomFrom(run.seed)
      for (let step = 0; step < left && Date.now() < end; step++) {
        print(`The manager ${await lead(crew.manager, sims, random)}`)
        await line.readOn()
        await pause(run.paceMs)
      }
    }
  } finally {
    await crew.close()
  }
}

function simsOf({ manager, phones, land }: Crew, seed: number, complaints: string[]): Sim[] {
  return phones.map((phone, index) => {
    const random = randomFrom(seed * 1000 + 500 + index)
    return {
      phone,
      random,
      land,
      manager,
      complaints,
      others: phones.filter((other) => other !== phone),
      at: null,
      noSignalFor: 0,
      putDown: new Set(),
      anyTree: () => random.pick(land.trees)?.no ?? null,
    }
  })
}

/** Signal is found, the tree put down, the tools hung up, and the person counted out. */
async function goHome(sim: Sim): Promise<void> {
  const { phone, putDown } = sim
  const { personId } = phone.seat
  await phone.findSignal()
  const held = holding(sim)
  if (held?.row) await phone.keep('finish_brush', { claim: held.id, trees: [] })
  else if (held) {
    putDown.add(held.id)
    const work = { claim: held.id, tree: held.tree ?? 0, share: 50, note: null }
    await phone.keep('release_tree', { ...work, at: null, begunAt: null, elapsedS: null })
  }
  const helping = claimOf(phone.state(), personId)
  if (helping) await phone.keep('leave_tree', { claim: helping.id })
  if (!phone.state().attendance[personId]) return
  for (const tool of toolsOf(phone.state(), [personId])) await phone.keep('return_tool', { tool })
  if (openShift(phone.state())) await phone.keep('leave', {})
}

function summaryOf(phones: readonly CrewPhone[]): string {
  const counts = new Map<string, number>()
  for (const { name, answer } of phones.flatMap(({ sent }) => sent)) {
    const results = isRefused(answer)
      ? answer.refused.map(({ code }) => `${name} refused: ${code}`)
      : [answer.kept ? `${name} kept as ${answer.kept}` : name]
    for (const result of results) counts.set(result, (counts.get(result) ?? 0) + 1)
  }
  return [...counts]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([result, count]) => `${String(count).padStart(5)}  ${result}`)
    .join('\n')
}
