'use client'

import { type BrushRow, brushRows, useNow, useSelect, useSend } from '@/lib/hooks'
import { holderIn } from '../crew/claims'
import { workArgsFor } from '../crew/work-args-for'

/** Finishes a held tree or row for its holder, or gives it back as not begun. Kept like all work, so it waits for nothing. */
export function usePutDown(): (claim: string, isFinished: boolean) => Promise<void> {
  const send = useSend()
  const now = useNow(30_000)
  const claims = useSelect((view) => view.state?.claims)
  const rows = useSelect(brushRows)
  return async (id, isFinished) => {
    const claim = claims?.[id]
    const holder = claim && holderIn(claim)
    if (!claim || !holder) return
    if (claim.row) {
      const { block, row } = claim.row
      const trees = isFinished ? (rows.find(isOf(block, row))?.open ?? []) : []
      await send('finish_brush', { claim: id, trees }, { personId: holder })
    }
    if (claim.tree === null) return
    const work = workArgsFor({ ...claim, id }, claim.tree, now)
    const forThem = { personId: holder }
    if (isFinished) await send('finish_tree', work, forThem)
    else await send('release_tree', { ...work, share: null, note: null }, forThem)
  }
}

function isOf(block: number, row: number): (one: BrushRow) => boolean {
  return (one) => one.block === block && one.row === row
}
