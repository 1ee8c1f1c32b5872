'use client'

import { useDraft } from '@/lib/hooks'

/** How many steps are done in the tree in hand, kept on this device until the tree is let go. */
export function useStepsDone(tree: number) {
  const draft = useDraft(`steps-${tree}`, 0)
  return { stepsDone: draft.value, setStepsDone: draft.write, forget: draft.drop }
}
