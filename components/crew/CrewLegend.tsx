'use client'

import { type Look, type Mark, markOf } from '@/lib/domain/orchard/status'
import { looksOf, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Legend } from '../ui/Legend'
import type { MarkName } from '../ui/Mark'

const legend: readonly { status: Mark; mark: MarkName; ifAny?: true }[] = [
  { status: 'unpruned', mark: 'unpruned' },
  { status: 'in_progress', mark: 'inProgress' },
  { status: 'dealt', mark: 'dealtToOther', ifAny: true },
  { status: 'done', mark: 'done' },
  { status: 'disease', mark: 'disease' },
  { status: 'arborist', mark: 'arborist' },
  { status: 'closed', mark: 'closed' },
  { status: 'held_by_me', mark: 'mine', ifAny: true },
  { status: 'dealt_to_me', mark: 'dealt', ifAny: true },
]

/** What the marks on the map mean, and how many there are of each. */
export function CrewLegend() {
  const { common } = useWords()
  const found = useSelect((view) => countMarks(looksOf(view)))
  return (
    <Legend
      label={common.legend}
      items={legend
        .filter(({ status, ifAny }) => !ifAny || found[status])
        .map(({ status, mark }) => ({
          mark,
          word: common.status[status],
          count: found[status] ?? 0,
        }))}
    />
  )
}

function countMarks(looks: ReadonlyMap<number, Look>): Partial<Record<Mark, number>> {
  const found: Partial<Record<Mark, number>> = {}
  for (const look of looks.values()) {
    const mark = markOf(look)
    found[mark] = (found[mark] ?? 0) + 1
  }
  return found
}
