/** One person in one orchard on this device: follows, keeps, sends, and says what is seen. */

import type { Backend, Membership } from '@/lib/data/backend'
import { keptAs } from '@/lib/events/answer'
import type { ArgsOf } from '@/lib/events/commands'
import { type Event, isHeard } from '@/lib/events/event'
import type { Instant, State } from '@/lib/events/state'
import { type Follow, follow, type Standing } from '@/lib/sync/follow'
import { openOutbox } from '@/lib/sync/outbox'
import type { Bell, Clock, Kept, Locks, Random, Storage } from '@/lib/sync/ports'
import { timerOf } from '@/lib/sync/timer'

import { appVersion } from './app-version'
import { type BeginResult, canBegin, endsBegun, isClaimed, workArgsOf } from './begun'
import { readCold, writeCold } from './cold'
import { handInWork } from './hand-in'
import { isSame, same } from './is-same'
import { keepTexts } from './kept-texts'
import { seen } from './seen'
import { type Send, sender } from './sending'
import type { Sent } from './sent'
import { type Begun, startingView, type View } from './view'

/** What a session needs of the device. */
export type Device = { storage: Storage; clock: Clock; random: Random; locks: Locks }

export type SessionBackend = Pick<
  Backend,
  'address' | 'as' | 'names' | 'treeSheet' | 'emergencyCard' | 'briefing'
>

export type SessionParts = Device & {
  backend: SessionBackend
  bell: Bell
  userId: string
  membership: Membership
  /** Everybody for whom this login acts, here or elsewhere. */
  mine: () => readonly string[]
  owner: string
  changed: (view: View) => void
}

export type Session = {
  send: Send
  /** Only a tree dealt to me, and one at a time. */
  begin: (tree: number) => Promise<BeginResult>
  workArgs: (tree: number) => Required<ArgsOf<'finish_tree'>>
  dismiss: (seq: number) => Promise<void>
  sendAgain: (seq: number) => Promise<void>
  handIn: () => Promise<Sent>
  wake: () => void
  /** The page is put away and may never come back. */
  rest: () => void
  close: () => void
}

/** The first time soon, since a phone may be put away again at once. */
const [coldFirstMs, coldEveryMs] = [1_000, 5_000]

export function openSession(parts: SessionParts): Session {
  const { backend, storage, clock, membership, owner } = parts
  const { orchardId, personId } = membership
  const server = backend.as(parts.userId)
  const begunKey = `begun|${owner}`
  const saving = timerOf(clock)
  let isSavingDue = false
  let wasSaved = false
  const known = new Set<string>()
  let view: View = { ...startingView, me: membership }
  let items: readonly Kept[] = []
  let minClient = 0
  let heardAt = clock.now()
  let closed = false
  let following: Follow | null = null

  const outbox = openOutbox({
    ...parts,
    server,
    changed: (next) => {
      items = next
      show({ state: stateSeen(view.confirmed) })
    },
    isOut: async () => (await following?.isOut()) ?? 'unknown',
    signedOut: () => stood('signed_out'),
  })
  const texts = keepTexts({ ...parts, changed: show })
  const send = sender({
    ...parts,
    server,
    outbox,
    orchardId,
    personId,
    view: () => view,
    now,
    kept: async (command) => {
      if (endsBegun(command, view.begun)) await setBegun(null)
    },
    asking: (name, isAsked) => {
      const others = view.asking.toSpliced(view.asking.indexOf(name), 1)
      show({ asking: isAsked ? [...view.asking, name] : others })
    },
    accepted: () => following?.ask(),
  })
  void start()

  return {
    send,
    begin,
    workArgs: (tree) => workArgsOf(view, personId, tree, now()),
    dismiss: outbox.dismiss,
    sendAgain: outbox.sendAgain,
    handIn: () => handInWork({ ...parts, outbox, send }, view.unsent),
    wake,
    rest: () => void keepCold(),
    close,
  }

  async function start(): Promise<void> {
    const cold = await readCold(storage, owner)
    // Only `setBegun` writes under this key. A device that cannot read what it kept still follows the day.
    const begun = (await storage.read(begunKey).catch(() => undefined)) as Begun | undefined
    await texts.load().catch(() => {})
    if (closed) return
    for (const id of cold?.known ?? []) known.add(id)
    heardAt = cold?.heardAt ?? heardAt
    const confirmed = cold?.state ?? null
    show({ confirmed, state: stateSeen(confirmed), begun: begun ?? null })
    following = follow({
      ...parts,
      server,
      orchardId,
      personId,
      isMine: (id) => id === personId || parts.mine().includes(id),
      start: confirmed,
      changed: confirm,
      stood,
      heartbeat: (beat, skewMs) => {
        minClient = beat.minClient
        show({ skewMs })
        if (view.confirmed) texts.askAgain(view.confirmed)
      },
    })
  }

  function confirm(confirmed: State, events: readonly Event[]): void {
    for (const event of events) if (isHeard(event)) known.add(event.commandId)
    minClient = Math.max(minClient, confirmed.minClient)
    show({ confirmed, state: stateSeen(confirmed) })
    if (view.begun && isClaimed(confirmed, view.begun, personId)) void setBegun(null)
    texts.follow(confirmed, events)
    void outbox.onEpoch(confirmed.epoch)
    keepColdSoon()
  }

  function stateSeen(confirmed: State | null): State | null {
    return confirmed && seen(confirmed, items, { known, ground: view.ground })
  }

  function stood(standing: Standing): void {
    if (standing === 'reached') heardAt = clock.now()
    show(standingIn(view, standing, instant(heardAt)))
  }

  function show(change: Partial<View>): void {
    const unsent = items.filter((kept) => kept.state === 'unsent')
    const refused = items.filter((kept) => kept.state === 'refused')
    const cameInOtherwise = items.filter(({ answer }) => keptAs(answer) !== null)
    const next: View = {
      ...view,
      ...change,
      unsent: same(view.unsent, unsent),
      refused: same(view.refused, refused),
      cameInOtherwise: same(view.cameInOtherwise, cameInOtherwise),
      reloadWanted: minClient > appVersion && unsent.length === 0,
    }
    if (closed || isSame(view, next)) return
    view = next
    parts.changed(view)
  }

  async function begin(tree: number): Promise<BeginResult> {
    const result = canBegin(view.state, view.begun, personId, tree)
    if (result === 'begun') await setBegun({ tree, at: now() })
    return result
  }

  async function setBegun(begun: Begun | null): Promise<void> {
    show({ begun })
    if (begun) await storage.write(begunKey, begun)
    else await storage.drop(begunKey)
  }

  function wake(): void {
    outbox.wake()
    following?.ask()
  }

  function close(): void {
    void keepCold()
    closed = true
    saving.off()
    following?.close()
    outbox.close()
    parts.bell.close()
  }

  /** On a busy day something happens all the time: what is due once stays due. */
  function keepColdSoon(): void {
    if (isSavingDue) return
    isSavingDue = true
    saving.in(wasSaved ? coldEveryMs : coldFirstMs, () => void keepCold())
  }

  async function keepCold(): Promise<void> {
    isSavingDue = false
    wasSaved = true
    const { confirmed, unsent } = view
    if (!confirmed) return
    const ids = unsent.map(({ command }) => command.id)
    await writeCold(storage, owner, {
      state: confirmed,
      known: ids.filter((id) => known.has(id)),
      heardAt,
    })
  }

  function now(): Instant {
    return instant(clock.now() + view.skewMs)
  }
}

function standingIn(view: View, standing: Standing, heardAt: Instant): Partial<View> {
  const phase = view.confirmed ? 'in' : view.phase
  switch (standing) {
    case 'asking':
      return { phase }
    case 'reached':
      return { phase, signal: 'reached', outOfTouchSince: null }
    case 'no_signal':
      return { phase, signal: 'no_signal', outOfTouchSince: heardAt }
    case 'not_admitted':
    case 'signed_out':
    case 'out':
      return { phase: standing, signal: 'reached', outOfTouchSince: null }
  }
}

function instant(ms: number): Instant {
  return new Date(ms).toISOString()
}
