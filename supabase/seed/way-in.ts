/** In by a link, as a person comes in: the set-up link makes the orchard, others find or make the person. */

import { isRefused } from '@/lib/events/answer'

import { atTheGate, type Call, mustRead, type Seat, send } from './referee'

export type WayIn = { isSetUp: boolean; code: string }

/** Null: no link of ours. */
export function wayInOf(link: string): WayIn | null {
  if (!URL.canParse(link)) return null
  const { pathname, hash } = new URL(link)
  const code = decodeURIComponent(hash.slice(1))
  if (code === '') return null
  return { isSetUp: pathname.endsWith('/set-up'), code }
}

export type Looked = {
  kind: 'join' | 'role' | 'device' | 'recovery'
  role: 'manager' | 'lead' | 'volunteer'
  over: string | null
}

/** What a link would do, without using it up. Null: nothing any more. */
export async function lookAt(call: Call, code: string): Promise<Looked | null> {
  const looked = (await mustRead(call, 'look_at_invite', { p_code: code })) as Looked | null
  return looked?.over === null ? looked : null
}

export type Entered = { state: 'in'; seat: Seat } | { state: 'refused'; code: string }

export async function redeem(call: Call, code: string, name: string | null): Promise<Entered> {
  return enteredBy(call, await send(atTheGate(call), 'redeem', { code, name }))
}

export type Founding = {
  code: string
  name: string
  personName: string
  timeZone: string
  language: 'en' | 'es'
  units: 'metric' | 'us'
}

export async function found(call: Call, founding: Founding): Promise<Entered> {
  return enteredBy(call, await send(atTheGate(call), 'create_orchard', founding))
}

function enteredBy(call: Call, outcome: Awaited<ReturnType<typeof send>>): Entered {
  if (!outcome.ok) return { state: 'refused', code: outcome.code ?? outcome.fault }
  const answer = outcome.value
  if (isRefused(answer)) return { state: 'refused', code: answer.refused[0]?.code ?? '' }
  const { orchard = '', person = '' } = answer
  return { state: 'in', seat: { call, orchardId: orchard, personId: person } }
}
