'use client'

import { useState } from 'react'

import type { TeamPlan } from '@/lib/domain/planning/shift-plan'
import { useSend } from '@/lib/hooks'

/** People of teams to whom nothing was dealt. */
type NotDealt = readonly (readonly string[])[]

export type Dealt = {
  trees: number
  teams: number
  refused: NotDealt
  noAnswer: NotDealt
}

export type DealingPlan =
  | { state: 'idle' }
  | { state: 'dealing'; at: number; all: number }
  | ({ state: 'dealt' } & Dealt)

/** Deals a plan team by team; what one refuses does not keep the others from theirs. */
export function useDealPlan() {
  const send = useSend()
  const [dealing, setDealing] = useState<DealingPlan>({ state: 'idle' })

  async function deal(teams: readonly TeamPlan[]): Promise<void> {
    let [trees, dealtTo] = [0, 0]
    const refused: string[][] = []
    const noAnswer: string[][] = []
    for (const [at, one] of teams.entries()) {
      setDealing({ state: 'dealing', at: at + 1, all: teams.length })
      const to = one.team.map(({ id }) => id)
      const sent = await send('deal_trees', { trees: one.trees.map(({ no }) => no), to })
      if (sent.state === 'accepted' || sent.state === 'kept') {
        trees += one.trees.length
        dealtTo++
      } else if (sent.state === 'refused') refused.push(to)
      else noAnswer.push(to)
    }
    setDealing({ state: 'dealt', trees, teams: dealtTo, refused, noAnswer })
  }

  return { dealing, deal, forget: () => setDealing({ state: 'idle' }) }
}
