'use client'

/** Doing things. */

import { useMemo } from 'react'

import type { Outcome } from '@/lib/events/answer'
import type { ArgsOf } from '@/lib/events/commands'
import type { Archives } from '@/lib/state/archives'
import type { BeginResult } from '@/lib/state/begun'
import { newCode } from '@/lib/state/code'
import type { Invite } from '@/lib/state/reads'
import type { Rowcall } from '@/lib/state/rowcall'
import type { Send } from '@/lib/state/sending'
import type { Sent } from '@/lib/state/sent'
import type { Session } from '@/lib/state/session'

import { useComingClient } from './provider'

/** Nobody is chosen on this device. */
const nobody: Sent = { state: 'failed', id: '', fault: 'signed_out', code: null }

export function useSend(): Send {
  const coming = useComingClient()
  return useMemo((): Send => {
    return async (name, args, options) => {
      const session = await (await coming()).session()
      return session ? session.send(name, args, options) : nobody
    }
  }, [coming])
}

type InviteWish = Omit<ArgsOf<'make_invite'>, 'codeHash'>

export type Doings = Archives & {
  lookAtInvite: (code: string) => Promise<Outcome<Invite | null>>
  redeem: (args: ArgsOf<'redeem'>) => Promise<Sent>
  createOrchard: (args: ArgsOf<'create_orchard'>) => Promise<Sent>
  choose: (orchardId: string, personId: string) => void
  chooseAgain: () => void
  /** The secret is made here; only its hash leaves the device. */
  makeInvite: (wish: InviteWish) => Promise<{ sent: Sent; code: string }>
  beginWithoutSignal: (tree: number) => Promise<BeginResult>
  workArgs: (tree: number) => Promise<Required<ArgsOf<'finish_tree'>>>
  dismiss: (seq: number) => Promise<void>
  sendAgain: (seq: number) => Promise<void>
  handIn: () => Promise<Sent>
  retry: () => void
}

export function useRowcall(): Doings {
  const coming = useComingClient()
  return useMemo(() => doings(coming), [coming])
}

function doings(coming: () => Promise<Rowcall>): Doings {
  const inSession = async <Value>(
    run: (session: Session) => Promise<Value> | Value,
    none: Value
  ) => {
    const session = await (await coming()).session()
    return session ? run(session) : none
  }
  const withClient = (run: (rowcall: Rowcall) => void) => void coming().then(run)
  return {
    lookAtInvite: async (code) => (await coming()).lookAtInvite(code),
    redeem: async (args) => (await coming()).redeem(args),
    createOrchard: async (args) => (await coming()).createOrchard(args),
    bringInOrchard: async (archive) => (await coming()).bringInOrchard(archive),
    takeOut: async (...asked) => (await coming()).takeOut(...asked),
    takeHours: async (orchardId) => (await coming()).takeHours(orchardId),
    choose: (orchardId, personId) => withClient((rowcall) => rowcall.choose(orchardId, personId)),
    chooseAgain: () => withClient((rowcall) => rowcall.chooseAgain()),
    makeInvite: async (wish) => {
      const { code, codeHash } = newCode()
      const invite = { ...wish, codeHash }
      return {
        sent: await inSession((session) => session.send('make_invite', invite), nobody),
        code,
      }
    },
    beginWithoutSignal: (tree) => inSession<BeginResult>((it) => it.begin(tree), 'not_dealt'),
    workArgs: (tree) => {
      const unknown = { claim: null, tree, begunAt: null, at: null, elapsedS: null }
      return inSession((session) => session.workArgs(tree), unknown)
    },
    dismiss: (seq) => inSession((session) => session.dismiss(seq), undefined),
    sendAgain: (seq) => inSession((session) => session.sendAgain(seq), undefined),
    handIn: () => inSession((session) => session.handIn(), nobody),
    retry: () => withClient((rowcall) => rowcall.retry()),
  }
}
