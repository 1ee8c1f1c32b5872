'use client'

import { useMemo } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { leavableIn } from './leave-out'
import { useAsk } from './use-ask'

/** Leaves trees out of the round, with a reason, and takes them in again. */
export function useLeaveOut(trees: readonly number[]) {
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const state = useSelect((view) => view.state)
  const ground = useSelect((view) => view.ground)
  const leavable = useMemo(() => leavableIn({ state, ground }, trees), [state, ground, trees])
  const { can, out } = leavable
  return {
    ...leavable,
    asked,
    isAsking,
    leaveOut: (reason: string, then: (count: number) => void) =>
      ask(send('leave_out_trees', { trees: [...can], reason }), () => then(can.length)),
    bringBack: (then: (count: number) => void) =>
      ask(send('leave_out_trees', { trees: [...out] }), () => then(out.length)),
  }
}

export type RoundOfTrees = ReturnType<typeof useLeaveOut>
