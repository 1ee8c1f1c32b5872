'use client'

import { useState } from 'react'

import type { FaultCode, Refusal } from '@/lib/events/answer'
import type { Sent } from '@/lib/hooks'

export type Asked =
  | { state: 'idle' }
  | { state: 'asking' }
  | { state: 'refused'; refused: readonly Refusal[] }
  | { state: 'no_answer' }
  | { state: 'failed'; fault: FaultCode; code: string | null }

/** Sent, or kept to go out by itself. */
export type Done = Extract<Sent, { state: 'kept' | 'accepted' }>

/** Asks for one thing at a time, and keeps for the screen what came of it. */
export function useAsk() {
  const [asked, setAsked] = useState<Asked>({ state: 'idle' })

  async function ask(sending: Promise<Sent>, then?: (done: Done) => void): Promise<void> {
    setAsked({ state: 'asking' })
    const sent = await sending
    if (sent.state === 'kept' || sent.state === 'accepted') {
      setAsked({ state: 'idle' })
      then?.(sent)
    } else setAsked(sent)
  }

  return {
    asked,
    isAsking: asked.state === 'asking',
    ask,
    forget: () => setAsked({ state: 'idle' }),
  }
}
