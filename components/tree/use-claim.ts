'use client'

import { useState } from 'react'

import type { Refusal } from '@/lib/events/answer'
import { type Sent, useRowcall, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import type { ClaimWish } from './claim-wish'
import { claimArgs } from './claim-wish'

export type Asked =
  | { state: 'not_asked' }
  | { state: 'asking' }
  | { state: 'refused'; refused: readonly Refusal[]; next: number | null }
  | Extract<Sent, { state: 'no_answer' } | { state: 'failed' }>
  | { state: 'cannot_begin' }

/** Asks for a tree, and goes to it once it is mine. A claim is asked once and never kept. */
export function useClaim(tree: number) {
  const send = useSend()
  const { beginWithoutSignal } = useRowcall()
  const go = useGo()
  const [asked, setAsked] = useState<Asked>({ state: 'not_asked' })

  async function ask(wish: ClaimWish): Promise<void> {
    setAsked({ state: 'asking' })
    const sent = await send('claim_tree', claimArgs(tree, wish))
    switch (sent.state) {
      case 'accepted':
      case 'kept':
        return go.push(routes.tree(tree))
      case 'refused':
        return setAsked({
          state: 'refused',
          refused: sent.refused,
          next: sent.next?.tree ?? null,
        })
      case 'no_answer':
      case 'failed':
        return setAsked(sent)
    }
  }

  async function begin(): Promise<void> {
    const result = await beginWithoutSignal(tree)
    if (result === 'begun') go.push(routes.tree(tree))
    else setAsked({ state: 'cannot_begin' })
  }

  return { asked, ask, begin }
}
