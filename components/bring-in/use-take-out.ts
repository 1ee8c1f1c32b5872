'use client'

import { useState } from 'react'

import { archiveText } from '@/lib/domain/orchard/archive'
import { historyCsv, historyTables } from '@/lib/domain/orchard/export-records'
import { treesCsv, treesGeoJson } from '@/lib/domain/orchard/export-trees'
import { useRowcall, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useHoursFile } from '../rooms/use-hours-file'
import { saveBlob, saveFile } from '../shift/save-file'
import { gzipped } from './gzip'
import { openHazards } from './open-hazards'

type TakingOut =
  | { step: 'idle' }
  | { step: 'reading'; rows: number }
  | { step: 'saved'; name: string }
  | { step: 'failed'; why: 'moved' | 'fault' }

/** Reads what is wanted, hands it to the browser as a file, and says what became of it. */
export function useTakeOut() {
  const { takeOut: text, shift } = useLeadWords()
  const { takeOut, takeHours } = useRowcall()
  const sheet = useSelect((view) => view.sheet)
  const hazards = useSelect(openHazards)
  const orchardId = useSelect((view) => view.me?.orchardId ?? '')
  const orchardName = useSelect((view) => view.state?.orchard.name ?? '')
  const saveHours = useHoursFile()
  const [state, setState] = useState<TakingOut>({ step: 'idle' })

  const nameOf = (what: string, ending: string) => `${what}-${today()}.${ending}`
  const kindOf = (kind: string) => shift.kinds[kind as keyof typeof shift.kinds] ?? kind
  const saved = (name: string) => setState({ step: 'saved', name })
  const read = async (tables: readonly string[] | null) => {
    setState({ step: 'reading', rows: 0 })
    const taken = await takeOut(orchardId, tables, (rows) => setState({ step: 'reading', rows }))
    if (taken.ok) return taken.value
    setState({ step: 'failed', why: taken.fault === 'moved' ? 'moved' : 'fault' })
    return null
  }

  return {
    state,

    takeTrees: (as: 'csv' | 'geojson') => {
      if (!sheet) return
      const orchard = {
        trees: [...sheet.trees],
        blocks: [...sheet.blocks],
        cultivars: [...sheet.cultivars],
      }
      const known = new Map(hazards)
      const name = nameOf(text.files.trees, as)
      if (as === 'csv') saveFile(name, treesCsv(orchard, known))
      else
        saveBlob(name, new Blob([treesGeoJson(orchard, known)], { type: 'application/geo+json' }))
      saved(name)
    },

    takeHistory: async () => {
      const parts = await read(historyTables)
      if (parts === null) return
      const name = nameOf(text.files.history, 'csv')
      const resultOf = (result: string) =>
        text.results[result as keyof typeof text.results] ?? result
      const timeOf = (at: string) => new Date(at).toISOString()
      saveFile(name, historyCsv(parts, { heads: text.historyHeads, kindOf, resultOf, timeOf }))
      saved(name)
    },

    takeHours: async () => {
      setState({ step: 'reading', rows: 0 })
      const told = await takeHours(orchardId)
      if (!told.ok) return setState({ step: 'failed', why: 'fault' })
      saved(saveHours(told.value, today()))
    },

    takeArchive: async () => {
      const parts = await read(null)
      if (parts === null) return
      const said = { orchard: orchardId, name: orchardName, at: new Date().toISOString() }
      const name = nameOf(text.files.archive, 'rowcall.gz')
      saveBlob(name, await gzipped(archiveText(said, parts)))
      saved(name)
    },
  }
}

function today(): string {
  return new Date().toISOString().slice(0, 10)
}
