'use client'

import { useMemo } from 'react'

import { useDraft, useSelect } from '@/lib/hooks'
import { type NewBlock, numbersIn, planOf, untouched } from './new-block'
import { useLayout } from './use-layout'

/** What is typed, kept on this device, and what it would make. */
export function useNewBlock() {
  const draft = useDraft<NewBlock>('new-block', untouched)
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const block = draft.value
  const numbers = useMemo(() => numbersIn(block, units), [block, units])
  const plan = useMemo(() => planOf(block, numbers), [block, numbers])
  const { result, isBehind, isAwaited } = useLayout(plan)
  return {
    block,
    units,
    numbers,
    plan,
    layout: result && 'trees' in result ? result : null,
    fault: result && 'code' in result ? result : null,
    isBehind,
    isAwaited,
    change: (changes: Partial<NewBlock>) => draft.write({ ...block, ...changes }),
    drop: () => draft.writeNow(untouched),
  }
}

export type NewBlockNow = ReturnType<typeof useNewBlock>
