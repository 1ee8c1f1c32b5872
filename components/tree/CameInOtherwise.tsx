'use client'

import { keptAs } from '@/lib/events/answer'
import { type Kept, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'

/** Work that was late: nothing of it is lost, but it is not what the person thinks it is. */
export function CameInOtherwise({ tree }: { tree?: number }) {
  const { unsent } = useWords()
  const tagOf = useTagOf()
  const things = useSelect((view) =>
    view.cameInOtherwise.filter((kept) => tree === undefined || treeOf(kept) === tree)
  )
  return things.map((kept) => {
    const tag = tagOf(treeOf(kept) ?? 0)
    const isLate = keptAs(kept.answer) === 'late'
    return (
      <Note key={kept.seq} tone="call" icon="clock" role="status" lead={unsent.cameInTitle}>
        {isLate ? unsent.cameLate(tag) : unsent.alsoWorked(tag)}
      </Note>
    )
  })
}

export function treeOf({ command }: Kept): number | null {
  return 'tree' in command.args ? (command.args.tree ?? null) : null
}
