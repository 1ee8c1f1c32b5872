/** A referee in memory, and the lines by which phones reach it: they can be cut, go silent, or lose answers. */

import type { Answer, Outcome } from '@/lib/events/answer'
import type { Command } from '@/lib/events/commands'
import type { Event, Happening } from '@/lib/events/event'
import { predict } from '@/lib/events/predict'
import { fold } from '@/lib/events/reduce'
import type { State } from '@/lib/events/state'
import type { Clock, Ear, Live, Server } from '@/lib/sync/ports'

import { aClaim, aState } from '../../events/a-state'

type Numbered = { n: number } & Happening

export type Referee = ReturnType<typeof openReferee>
export type Line = Server & {
  online: boolean
  /** Whatever is asked is never answered. */
  silent: boolean
  /** Takes what is sent and loses so many answers. */
  answersToLose: number
  /** What happens to broadcasts on the way. */
  broadcasts: 'come' | 'are lost' | 'come twice' | 'come in reverse'
  /** Every broadcast that was held for `come in reverse`. */
  deliver: () => void
  dropChannels: () => void
  frame: () => void
  asked: string[]
}

export function openReferee(clock: Clock) {
  let state = aState({ head: 0, me: { personId: '', role: 'lead' } })
  let events: Numbered[] = []
  const answers = new Map<string, Answer>()
  const ears = new Set<{ topic: string; ear: Ear; line: Line; userId: string }>()
  const out = new Set<string>()
  const log: string[] = []

  return {
    log,
    state: () => state,
    take,
    happen,
    line,
    /** A backup is played back: what came after it is forgotten. */
    restore: (head: number) => {
      events = events.filter((event) => event.n <= head)
      answers.clear()
      state = events.reduce(
        (before, event) => folded(before, event),
        aState({ head: 0, me: { personId: '', role: 'lead' } })
      )
      state = { ...state, head, epoch: '00000000-0000-4000-8000-00000000e90c', channelEpoch: 9 }
    },
    putOut: (userId: string) => {
      out.add(userId)
    },
    refusing: null as string | null,
  }

  function take(command: Command, userId: string): Answer {
    const seen = answers.get(command.id)
    if (seen) return seen
    const at = new Date(clock.now()).toISOString()
    const prediction = predict(state, command, { now: at })
    let answer: Answer
    if (command.name === 'claim_tree') {
      const body = {
        claim: command.id,
        ...aClaim(command.args.tree, { [command.personId]: 'holder' }),
      }
      answer = { n: happen('tree_claimed', body, command) }
    } else if (prediction === 'asking')
      answer = { n: happen('also_worked', {}, command), kept: 'also_worked' }
    else if ('refused' in prediction) answer = prediction
    else {
      const [first] = prediction
      answer = { n: happen(first?.kind ?? 'photo_added', first?.body ?? {}, command) }
    }
    answers.set(command.id, answer)
    const result = 'n' in answer ? `n ${answer.n}` : `refused ${answer.refused[0]?.code}`
    log.push(`${command.name} from ${userId}: ${result}`)
    return answer
  }

  function happen(kind: string, body: unknown, command: Partial<Command> = {}): number {
    const event: Numbered = {
      n: state.head + 1,
      at: new Date(clock.now()).toISOString(),
      commandId: command.id ?? `00000000-0000-4000-9000-${String(state.head).padStart(12, '0')}`,
      personId: command.personId ?? '',
      byPersonId: command.personId ?? '',
      kind,
      body,
    }
    const topic = `orchard:${state.orchardId}:${state.channelEpoch}`
    state = folded(state, event)
    events.push(event)
    for (const hearing of ears) if (hearing.topic === topic) broadcast(hearing, event)
    return event.n
  }

  function line(userId: string): Line {
    const held: (() => void)[] = []
    const own: Line & { held: (() => void)[] } = {
      held,
      online: true,
      silent: false,
      answersToLose: 0,
      broadcasts: 'come',
      deliver: () => {
        for (const each of held.splice(0).toReversed()) each()
      },
      dropChannels: () => {
        for (const hearing of [...ears]) {
          if (hearing.line !== own) continue
          ears.delete(hearing)
          hearing.ear.lost()
        }
      },
      frame: () => {
        for (const hearing of ears) if (hearing.line === own) hearing.ear.frame()
      },
      asked: [],
      send: (command, limitMs) =>
        over(own, userId, `send ${command.name}`, limitMs, () => take(command, userId)),
      snapshot: (_, personId) =>
        over(own, userId, 'snapshot', 15_000, () => ({
          ...state,
          me: { personId, role: 'volunteer' },
        })),
      eventsAfter: (_, __, epoch, n) =>
        over(own, userId, `events after ${n}`, 15_000, () => {
          if (epoch !== state.epoch || n > state.head) return { reset: true }
          return { events: events.filter((event) => event.n > n).slice(0, 5), head: state.head }
        }),
      heartbeat: () =>
        over(own, userId, 'heartbeat', 15_000, () => ({
          head: state.head,
          epoch: state.epoch,
          channelEpoch: state.channelEpoch,
          minClient: state.minClient,
          now: new Date(clock.now() + 90_000).toISOString(),
        })),
      listen: (topic, ear) => {
        own.asked.push(`listen ${topic.split(':').at(-1)}`)
        const hearing = { topic, ear, line: own, userId }
        const stop = clock.after(0, () => {
          if (!own.online || out.has(userId)) ear.lost()
          else {
            ears.add(hearing)
            ear.joined()
          }
        })
        return () => {
          stop()
          ears.delete(hearing)
        }
      },
    }
    return own
  }

  function broadcast(
    { ear, line, userId }: { ear: Ear; line: Line; userId: string },
    event: Event
  ) {
    if (!line.online || line.silent || out.has(userId)) return
    const live: Live = { ...event, more: false }
    switch (line.broadcasts) {
      case 'come':
        return ear.heard(live)
      case 'come twice':
        ear.heard(live)
        return ear.heard(live)
      case 'come in reverse':
        return (line as Line & { held: (() => void)[] }).held.push(() => ear.heard(live))
      case 'are lost':
        return
    }
  }

  /** What is asked over a line, and what becomes of it. */
  function over<Value>(
    own: Line,
    userId: string,
    what: string,
    limitMs: number,
    answer: () => Value
  ): Promise<Outcome<Value>> {
    own.asked.push(what)
    const noAnswer = { ok: false, fault: 'offline' } as const
    const late = () =>
      new Promise<Outcome<Value>>((resolve) => clock.after(limitMs, () => resolve(noAnswer)))
    if (own.silent) return late()
    if (!own.online) return Promise.resolve(noAnswer)
    if (out.has(userId))
      return Promise.resolve({ ok: false, fault: 'not_allowed', code: 'not_allowed' })
    const value = answer()
    if (own.answersToLose > 0 && what.startsWith('send')) {
      own.answersToLose--
      return late()
    }
    return Promise.resolve({ ok: true, value: structuredClone(value) })
  }
}

function folded(before: State, event: Numbered): State {
  const after = fold(before, event)
  return { ...(after === 'fetch again' ? before : after), head: event.n }
}
