/** What must be true when the crew has gone home, whatever happened in between. */

import { isDeepStrictEqual } from 'node:util'

import { isRefused } from '@/lib/events/answer'
import { type Event, isHeard } from '@/lib/events/event'
import type { State } from '@/lib/events/state'
import type { Line } from './crew-line'
import type { CrewPhone } from './crew-phone'
import type { Crew } from './crew-setup'
import { type Heard, snapshotOf } from './follow'

export type Check = { claim: string; wrong: string[] }

export type Watched = {
  line: Line
  /** Of the states on the way. */
  quarrels: readonly string[]
  /** Of commands sent again. */
  complaints: readonly string[]
}

export async function checkAll(crew: Crew, watched: Watched): Promise<Check[]> {
  const { manager, phones, land } = crew
  const all = [manager, ...phones]
  await manager.hear()
  await watched.line.readOn()
  const { from, events } = watched.line
  const end = manager.state()
  return [
    {
      claim: `the numbers ${from.head + 1} to ${end.head} are there, each once and in order`,
      wrong: events.flatMap(({ n }, at) =>
        n === from.head + 1 + at ? [] : [`${n} at place ${at + 1}`]
      ),
    },
    {
      claim: `no phone of ${all.length} has a hole in what it heard`,
      wrong: all.flatMap(({ name, follower }) =>
        holesIn(follower.heard).map((n) => `${name}: ${n}`)
      ),
    },
    {
      claim: 'what every phone folded is what its snapshot says',
      wrong: await unlikeSnapshot(all),
    },
    {
      claim: 'at every moment a tree had one open claim, and nobody was at two trees',
      wrong: [...watched.quarrels],
    },
    { claim: 'what was sent again got the first answer again', wrong: [...watched.complaints] },
    acknowledgedWork(all, events),
    countsOf(end, land.trees),
    {
      claim: 'nothing is left unsent',
      wrong: all.flatMap((phone) =>
        phone.unsent() > 0 ? [`${phone.name}: ${phone.unsent()}`] : []
      ),
    },
    {
      claim: 'the referee answered every command',
      wrong: all.flatMap((phone) =>
        phone.faults.map(({ name, fault, code }) => `${phone.name}: ${name}, ${code ?? fault}`)
      ),
    },
  ]
}

/** For every state on the way. */
export function quarrelsIn({ claims, head }: State): string[] {
  const trees = Object.values(claims).flatMap(({ tree }) => tree ?? [])
  const people = Object.values(claims).flatMap((claim) => Object.keys(claim.people))
  return [
    ...twiceIn(trees).map((tree) => `at ${head} tree ${tree} has two claims`),
    ...twiceIn(people).map((person) => `at ${head} ${person} is at two trees`),
  ]
}

function twiceIn<Item>(items: readonly Item[]): Item[] {
  return items.filter((item, at) => items.indexOf(item) !== at)
}

function holesIn(heard: readonly Heard[]): number[] {
  let next = 0
  return heard.flatMap((one) => {
    if ('snapshot' in one) {
      next = one.snapshot + 1
      return []
    }
    const { n } = one.event
    // What a snapshot had already comes again as an event, and is passed over.
    if (n < next) return []
    const hole = n > next ? [next] : []
    next = n + 1
    return hole
  })
}

async function unlikeSnapshot(phones: readonly CrewPhone[]): Promise<string[]> {
  const wrong: string[] = []
  for (const phone of phones) {
    // Somebody else may be at work meanwhile.
    for (let tries = 5; tries > 0; tries--) {
      await phone.hear()
      const folded = phone.state()
      const snapshot = await snapshotOf(phone.seat)
      if (snapshot.head !== folded.head && tries > 1) continue
      const keys = Object.keys(snapshot) as (keyof State)[]
      const unlike = keys.filter((key) => !isDeepStrictEqual(snapshot[key], folded[key]))
      if (unlike.length > 0) wrong.push(`${phone.name}: ${unlike.join(', ')}`)
      break
    }
  }
  return wrong
}

/** A visit has its command's id, and its event says that it is kept: once, by whom it was sent. */
function acknowledgedWork(phones: readonly CrewPhone[], line: readonly Event[]): Check {
  const heard = line.filter(isHeard)
  let count = 0
  const wrong = phones.flatMap(({ name, seat, sent }) =>
    sent.flatMap(({ id, name: command, answer }) => {
      if (!['finish_tree', 'release_tree'].includes(command) || isRefused(answer)) return []
      count += 1
      const found = heard.filter(({ commandId }) => commandId === id)
      const [event] = found
      const isKept = found.length === 1 && event?.n === answer.n && event.personId === seat.personId
      return isKept ? [] : [`${name}: ${command} ${id} is there ${found.length} times`]
    })
  )
  return { claim: `${count} trees acknowledged as put down are in the records exactly once`, wrong }
}

function countsOf(state: State, trees: Crew['land']['trees']): Check {
  const round = state.rounds[state.workRoundId ?? '']
  const own = new Set(
    trees.flatMap(({ no, species, life }) =>
      life === 'standing' && round?.species.includes(species) ? [no] : []
    )
  )
  const count = (wanted: string) =>
    Object.values(state.work).filter((work) => work.state === wanted).length
  const [done, begun, leftOut] = [count('done'), count('begun'), count('left_out')]
  const unpruned = [...own].filter((tree) => !state.work[tree]).length
  const sum = done + begun + unpruned + leftOut
  return {
    claim: `${done} done + ${begun} begun + ${unpruned} unpruned + ${leftOut} left out = ${own.size} trees of the round`,
    wrong: sum === own.size ? [] : [`they are ${sum}`],
  }
}
