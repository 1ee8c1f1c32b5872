/** Simulated calls for help: somebody asks, the manager comes, and it is settled. */

import type { Sim } from './crew-person'

export async function callForHelp({ phone, at }: Sim): Promise<string> {
  const { personId } = phone.seat
  const mine = Object.entries(phone.state().calls).find(([, call]) => call.calledBy === personId)
  if (mine) {
    await phone.keep('end_call', { call: mine[0], outcome: null })
    return 'has what they called for'
  }
  await phone.keep('call_for_help', { kind: 'question', tree: at, subject: null, note: null })
  return 'called a lead'
}

export async function answerCall(manager: Sim['manager']): Promise<string> {
  const calls = Object.entries(manager.state().calls)
  const waiting = calls.find(([, { answeredBy }]) => answeredBy === null)
  if (waiting) {
    await manager.ask('answer_call', { call: waiting[0] })
    return 'comes to who called'
  }
  const [answered] = calls
  if (!answered) return 'is called by nobody'
  await manager.ask('end_call', { call: answered[0], outcome: 'Shown at the tree.' })
  return 'settled a call'
}
