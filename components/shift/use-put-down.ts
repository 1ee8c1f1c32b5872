'use client'

import { useNow, useSelect, useSend } from '@/lib/hooks'
import { holderIn } from '../crew/claims'
import { workArgsFor } from '../crew/work-args-for'

/** Finishes a held tree for its holder, or gives it back as not begun. Kept like all work, so it waits for nothing. */
export function usePutDown(): (claim: string, isFinished: boolean) => Promise<void> {
  const send = useSend()
  const now = useNow(30_000)
  const claims = useSelect((view) => view.state?.claims)
  return async (id, isFinished) => {
    const claim = claims?.[id]
    const holder = claim && holderIn(claim)
    if (!claim || !holder || claim.tree === null) return
    const work = workArgsFor({ ...claim, id }, claim.tree, now)
    const forThem = { personId: holder }
    if (isFinished) await send('finish_tree', work, forThem)
    else await send('release_tree', { ...work, share: null, note: null }, forThem)
  }
}
