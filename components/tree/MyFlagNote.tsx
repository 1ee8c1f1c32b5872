'use client'

import { useNow, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { AskAtTree } from './AskAtTree'
import { undoUntil } from './undo-until'

/** For two minutes after I flagged this tree: the way to take it back. */
export function MyFlagNote({ tree }: { tree: number }) {
  const { flag: text } = useWords()
  const format = useFormat()
  const now = useNow(5_000)
  const minutes = useSelect((view) => view.state?.orchard.houseRules.withdraw_minutes ?? 0)
  const mine = useSelect((view) =>
    Object.entries(view.state?.flags ?? {})
      .filter(([, flag]) => flag.tree === tree && flag.raisedBy === view.me?.personId)
      .map(([id, flag]) => ({ id, raisedAt: flag.raisedAt }))
  )
  return mine.map(({ id, raisedAt }) => {
    const until = now && undoUntil(raisedAt, minutes, now)
    if (!until) return null
    return (
      <div key={id} className="last-work">
        <p className="small">{text.withdrawUntil(format.clock(until))}</p>
        <AskAtTree name="withdraw_flag" args={{ flag: id }} icon="undo">
          {text.withdraw}
        </AskAtTree>
      </div>
    )
  })
}
