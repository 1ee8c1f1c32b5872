/** The whole client on this device: who is signed in, for whom they act, and the session of one of them. */

import type { Invite } from '@/lib/data/answers'
import type { Backend, Membership } from '@/lib/data/backend'
import type { Outcome } from '@/lib/events/answer'
import { type ArgsOf, type Command, commandOf, type FromOutside } from '@/lib/events/commands'
import { ask } from '@/lib/sync/ask'
import { waitMs } from '@/lib/sync/backoff'
import { ownerKey } from '@/lib/sync/owner'
import type { Bell } from '@/lib/sync/ports'
import { timerOf } from '@/lib/sync/timer'

import { type Archives, archivesOf } from './archives'
import { type Drafts, draftsOf } from './drafts'
import { isSameMember, keepLastTime, noLastTime, readLastTime } from './last-time'
import { type Reads, readsOf } from './reads'
import { type Sent, sentOf } from './sent'
import type { Device, Session } from './session'
import { startingView, type View } from './view'

export type RowcallParts = Device & {
  backend: Backend
  bellOf: (name: string) => Bell
  /** Asked for when somebody is in. */
  inside: () => Promise<Pick<typeof import('./inside'), 'openSession' | 'sendForOther'>>
}

export type Rowcall = Archives & {
  view: () => View
  subscribe: (changed: () => void) => () => void
  /** Null while nobody is chosen. */
  session: () => Promise<Session | null>
  reads: () => Reads | null
  drafts: () => Drafts
  lookAtInvite: (code: string) => Promise<Outcome<Invite | null>>
  redeem: (args: ArgsOf<'redeem'>) => Promise<Sent>
  createOrchard: (args: ArgsOf<'create_orchard'>) => Promise<Sent>
  choose: (orchardId: string, personId: string) => void
  chooseAgain: () => void
  /** Signal is back, the page is looked at again, or somebody taps "try now". */
  retry: () => void
  /** The page is put away and may never come back. */
  rest: () => void
  close: () => void
}

export function openRowcall(parts: RowcallParts): Rowcall {
  const { backend, storage, clock, random } = parts
  const listeners = new Set<() => void>()
  const retrying = timerOf(clock)
  let view: View = startingView
  let last = noLastTime
  let session: Session | null = null
  /** Of whoever is chosen, as soon as it is there. */
  let entering: Promise<Session | null> | null = null
  let closeOthers: (() => void)[] = []
  let tries = 0
  let closed = false

  const save = () => keepLastTime(storage, backend.address, last)
  const starting = start()

  return {
    view: () => view,
    subscribe: (changed) => {
      listeners.add(changed)
      return () => listeners.delete(changed)
    },
    session: async () => entering,
    reads: () => {
      const { me } = view
      return me && readsOf(backend, storage, { owner: ownerOf(me), ...me })
    },
    drafts: () => draftsOf(storage, view.me ? ownerOf(view.me) : backend.address),
    lookAtInvite: async (code) => {
      const user = await backend.signIn()
      return user.ok ? backend.lookAtInvite(code) : user
    },
    redeem: (args) => getIn('redeem', args),
    createOrchard: (args) => getIn('create_orchard', args),
    ...archivesOf(backend, random, (args, id) => getIn('bring_in_orchard', args, id)),
    choose: (orchardId, personId) => {
      last = { ...last, chosen: { orchardId, personId } }
      void save()
      settle()
    },
    chooseAgain: () => {
      last = { ...last, chosen: null }
      void save()
      settle()
    },
    retry: () => {
      tries = 0
      session?.wake()
      void refresh()
    },
    rest: () => session?.rest(),
    close,
  }

  async function start(): Promise<void> {
    const known = await readLastTime(storage, backend.address)
    if (closed) return
    // Somebody may have got in meanwhile.
    if (last === noLastTime) last = known
    if (last.memberships.length > 0) settle()
    await refresh()
  }

  /** Asks who is signed in and for whom they act. */
  async function refresh(): Promise<void> {
    retrying.off()
    const user = await backend.user()
    if (!user.ok) return tryLater()
    if (user.value === null) return signedOut()
    const told = await backend.myOrchards()
    if (closed) return
    if (!told.ok) return told.fault === 'signed_out' ? signedOut() : tryLater()
    tries = 0
    if (user.value !== last.userId) {
      leaveSession()
      last = { userId: user.value, memberships: [], chosen: null }
    }
    const { me, phase, unsent } = view
    const isListed = !me || told.value.some((known) => isSameMember(known, me))
    // Somebody who was put out is not on the list any more, but may have work to hand in, also at the next start.
    const mayHandIn = !isListed && (phase !== 'out' || unsent.length > 0)
    last = { ...last, memberships: mayHandIn ? [...told.value, me] : told.value }
    await save()
    if (isListed) settle()
  }

  function tryLater(): void {
    if (!session) show({ ...view, signal: 'no_signal' })
    retrying.in(waitMs(tries++, random.share()), () => void refresh())
  }

  function signedOut(): void {
    const wasSomebody = last.memberships.length > 0
    leaveSession()
    show({ ...startingView, phase: wasSomebody ? 'signed_out' : 'nobody', signal: 'reached' })
  }

  /** Opens what is chosen, or asks. */
  function settle(): void {
    const { memberships, chosen } = last
    const only = memberships.length === 1 ? memberships[0] : undefined
    const wanted = chosen && memberships.find((known) => isSameMember(known, chosen))
    const membership = wanted ?? only
    if (membership) enter(membership)
    else {
      leaveSession()
      const phase = memberships.length === 0 ? 'nobody' : 'choose'
      show({ ...startingView, memberships, phase, signal: 'reached' })
    }
  }

  function enter(membership: Membership): void {
    const { memberships } = last
    if (entering && view.me && isSameMember(view.me, membership)) {
      show({ ...view, me: membership, memberships })
      return
    }
    leaveSession()
    show({ ...startingView, memberships, me: membership })
    const opening = open(membership, () => opening === entering)
    entering = opening
  }

  async function open(membership: Membership, isWanted: () => boolean): Promise<Session | null> {
    const inside = await parts.inside().catch(() => null)
    if (!isWanted()) return null
    if (!inside) {
      entering = null
      tryLater()
      return null
    }
    session = inside.openSession({
      ...whose(membership),
      mine: () => last.memberships.map(({ personId }) => personId),
      changed: (next) => {
        show({ ...next, memberships: last.memberships, me: view.me })
        if (next.phase === 'signed_out') signedOut()
      },
    })
    closeOthers = last.memberships
      .filter((other) => !isSameMember(other, membership))
      .map((other) => inside.sendForOther(whose(other)))
    return session
  }

  function whose(membership: Membership) {
    const owner = ownerOf(membership)
    return { ...parts, userId: last.userId, membership, owner, bell: parts.bellOf(owner) }
  }

  async function getIn<Name extends FromOutside>(
    name: Name,
    args: ArgsOf<Name>,
    id = random.id()
  ): Promise<Sent> {
    // It comes while the referee thinks.
    void parts.inside().catch(() => {})
    const user = await backend.signIn()
    if (!user.ok) return sentOf(id, user)
    // Neither is of an orchard or a person yet.
    const command = commandOf(name, args, { id, orchardId: '', personId: '' }) as Command
    const sent = sentOf(id, await ask({ ...parts, server: backend.as(user.value) }, command))
    if (sent.state !== 'accepted') {
      // It may be done all the same, and only the answer lost.
      void starting.then(refresh)
      return sent
    }
    const { orchard, person } = sent.answer
    if (view.phase === 'out') leaveSession()
    last = {
      userId: user.value,
      memberships: user.value === last.userId ? last.memberships : [],
      chosen: orchard && person ? { orchardId: orchard, personId: person } : null,
    }
    await starting
    await refresh()
    return sent
  }

  function ownerOf({ orchardId, personId }: Membership): string {
    return ownerKey({ backend: backend.address, orchardId, userId: last.userId, personId })
  }

  function leaveSession(): void {
    session?.close()
    session = null
    entering = null
    for (const closeOther of closeOthers) closeOther()
    closeOthers = []
    view = startingView
  }

  function show(next: View): void {
    view = next
    for (const changed of listeners) changed()
  }

  function close(): void {
    closed = true
    retrying.off()
    leaveSession()
    listeners.clear()
  }
}
