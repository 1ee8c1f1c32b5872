'use client'

import { calledKey } from '@/lib/domain/orchard/inventory-reader'
import { species } from '@/lib/domain/orchard/types'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Panel } from '../ui/Panel'
import { SelectField } from '../ui/SelectField'
import type { SaidDraft } from './use-bring-in'

type SpeciesChoicesProps = { strange: readonly string[]; said: SaidDraft }

/** Words for a kind of tree that nobody here knows: a person says what each is. */
export function SpeciesChoices({ strange, said }: SpeciesChoicesProps) {
  const words = useWords()
  const { bringIn: text } = useLeadWords()
  const options = species.map((one) => ({
    value: one,
    label: capitalised(speciesWords(words, one).name),
  }))
  const call = (word: string, value: string) => {
    const { [calledKey(word)]: _, ...others } = said.value.species
    const known = species.find((one) => one === value)
    said.write({
      ...said.value,
      species: known ? { ...others, [calledKey(word)]: known } : others,
    })
  }
  return (
    <Panel title={text.speciesTitle}>
      <div className="stack">
        <p>{text.speciesLead}</p>
        <div className="fields">
          {strange.map((word) => (
            <SelectField
              key={word}
              label={`“${word}”`}
              options={[{ value: '', label: text.chooseSpecies }, ...options]}
              value={said.value.species[calledKey(word)] ?? ''}
              onChange={(value) => call(word, value)}
            />
          ))}
        </div>
      </div>
    </Panel>
  )
}
