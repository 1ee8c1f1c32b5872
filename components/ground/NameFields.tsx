'use client'

import { useMemo } from 'react'

import { species } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import type { NewBlockNow } from './use-new-block'

/** What the block is called, and what grows there. */
export function NameFields({ now }: { now: NewBlockNow }) {
  const { ground } = useLeadWords()
  const { block, change } = now
  const options = useSpeciesOptions()
  const mostCommon = useMostCommonSpecies()
  return (
    <section className="ground-part">
      <TextField
        label={ground.name}
        hint={ground.nameHint}
        value={block.name}
        onChange={(name) => change({ name })}
        maxLength={60}
        autoComplete="off"
      />
      <div className="fields">
        <TextField
          label={ground.code}
          hint={ground.codeHint}
          value={block.code}
          onChange={(code) => change({ code })}
          maxLength={4}
          autoComplete="off"
        />
        <SelectField
          label={ground.species}
          hint={ground.speciesHint}
          options={options}
          value={block.species ?? mostCommon}
          onChange={(kind) => change({ species: kind })}
        />
      </div>
    </section>
  )
}

export function useSpeciesOptions(): { value: string; label: string }[] {
  const words = useWords()
  return useMemo(
    () =>
      species
        .map((value) => ({ value, label: capitalised(speciesWords(words, value).name) }))
        .toSorted((a, b) => a.label.localeCompare(b.label)),
    [words]
  )
}

/** What most trees here are; apples where there are none. */
export function useMostCommonSpecies(): string {
  const trees = useSelect((view) => view.sheet?.trees)
  return useMemo(() => {
    const counts = new Map<string, number>()
    for (const tree of trees ?? []) counts.set(tree.species, (counts.get(tree.species) ?? 0) + 1)
    return [...counts].toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? 'apple'
  }, [trees])
}
