'use client'

import type { Mark } from '@/lib/domain/orchard/status'
import { countMarks, useSelect } from '@/lib/hooks'
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
  const found = useSelect(countMarks)
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
