'use client'

import { useState } from 'react'

import { brushOfRow, brushReadiness, myTree, rowsToHaul, useSelect } from '@/lib/hooks'
import { HoldsAnother } from '../tree/HoldsAnother'
import { useMyDay } from '../tree/my-day'
import { NotReady } from '../tree/NotReady'
import { NoRow } from './NoRow'
import { RowInHand } from './RowInHand'
import { RowToHaul } from './RowToHaul'

/** Brush instead of a tree: the nearest row where wood lies, then that row in hand. */
export function HaulScreen() {
  const mine = useSelect(myTree)
  const held = mine.state === 'held' ? mine.claim.row : null
  const missing = useSelect(brushReadiness).filter(({ code }) => code !== 'holds_another')
  const { at } = useMyDay()
  const [chosen, setChosen] = useState<{ block: number; row: number } | null>(null)
  const rows = useSelect((view) => rowsToHaul(view, at))
  const inHand = useSelect((view) => held && brushOfRow(view, held.block, held.row))
  const picked = rows.find(({ block, row }) => block === chosen?.block && row === chosen.row)
  const [first] = rows
  const shown = picked ?? first

  if (mine.state === 'held' && inHand)
    return (
      <RowInHand
        key={mine.claimId}
        row={inHand}
        claimId={mine.claimId}
        claim={mine.claim}
        isHolder={mine.isHolder}
      />
    )
  if (mine.state !== 'none') return <HoldsAnother tree={mine.tree} />
  if (missing.length > 0) return <NotReady missing={missing} />
  if (!shown) return <NoRow />
  return <RowToHaul row={shown} others={rows.filter((row) => row !== shown)} onRow={setChosen} />
}
