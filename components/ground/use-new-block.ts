'use client'

import { useDeferredValue, useMemo } from 'react'

import { type Layout, type LayoutFault, layOut } from '@/lib/domain/orchard/layout'
import { useDraft, useSelect } from '@/lib/hooks'
import { type NewBlock, numbersIn, planOf, untouched } from './new-block'

/** What is typed, kept on this device, and what it would make. */
export function useNewBlock() {
  const draft = useDraft<NewBlock>('new-block', untouched)
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const block = draft.value
  const numbers = useMemo(() => numbersIn(block, units), [block, units])
  const plan = useMemo(() => planOf(block, numbers), [block, numbers])
  // Thousands of trees are laid out while one types: the letters come first.
  const shown = useDeferredValue(plan)
  const result = useMemo<Layout | LayoutFault | null>(() => shown && layOut(shown), [shown])
  return {
    block,
    units,
    numbers,
    plan,
    layout: result && 'trees' in result ? result : null,
    fault: result && 'code' in result ? result : null,
    /** What is shown is not yet of what is typed. */
    isBehind: shown !== plan,
    change: (changes: Partial<NewBlock>) => draft.write({ ...block, ...changes }),
    drop: () => draft.writeNow(untouched),
  }
}

export type NewBlockNow = ReturnType<typeof useNewBlock>
