'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Mark, type MarkName } from '../ui/Mark'

const legend = ['unpruned', 'in_progress', 'done', 'disease', 'arborist', 'closed'] as const
const marks: Record<(typeof legend)[number], MarkName> = {
  unpruned: 'unpruned',
  in_progress: 'inProgress',
  done: 'done',
  disease: 'disease',
  arborist: 'arborist',
  closed: 'closed',
}

/** What the shapes mean, and what else is on this drawing. */
export function PlanLegend({ hasGaps, hasKeepOuts }: { hasGaps: boolean; hasKeepOuts: boolean }) {
  const { common } = useWords()
  const { paper: text } = useLeadWords()
  return (
    <p className="paper-legend">
      {legend.map((mark) => (
        <span key={mark}>
          <Mark name={marks[mark]} size={14} /> {common.status[mark]}
        </span>
      ))}
      {hasGaps && <span>× {text.gap}</span>}
      <span>{text.rowTag}</span>
      {hasKeepOuts && <span>{text.keepOut}</span>}
    </p>
  )
}
