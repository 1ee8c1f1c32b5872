'use client'

import { useDeferredValue, useMemo } from 'react'

import { tableOfText } from '@/lib/domain/orchard/inventory-table'
import { type Draft, useDraft, useNow, useSelect } from '@/lib/hooks'

import { type ChosenFile, nothingSaid, type Said } from './bring-in-draft'
import { type Reading, readingOf } from './reading'

const noTrees = { trees: [], blocks: [], cultivars: [] }

/** The file in hand, what was said of it, and what it amounts to. */
export function useBringIn() {
  const file = useDraft<ChosenFile | null>('bring-in-file', null)
  const said = useDraft<Said>('bring-in', nothingSaid)
  const sheet = useSelect((view) => view.sheet)
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const thisYear = (useNow(3_600_000) ?? new Date()).getFullYear()
  // Whoever types in a field is not kept waiting for ten thousand rows.
  const settled = useDeferredValue(said.value)
  const table = useMemo(
    () => file.value && tableOfText(file.value.text, file.value.encoding),
    [file.value]
  )
  const existing = useMemo(
    () =>
      sheet
        ? {
            trees: [...sheet.trees],
            blocks: [...sheet.blocks],
            cultivars: [...sheet.cultivars],
          }
        : noTrees,
    [sheet]
  )
  const reading = useMemo(
    (): Reading | null =>
      table && !('problems' in table)
        ? readingOf({ table, said: settled, existing, thisYear, units })
        : null,
    [table, settled, existing, thisYear, units]
  )
  return { file, said, table, existing, reading, isReady: file.ready && said.ready }
}

export type SaidDraft = Draft<Said>
