'use client'

import { useState } from 'react'

import { budSites, type Cultivar, habits } from '@/lib/domain/orchard/types'
import { useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { useMostCommonSpecies, useSpeciesOptions } from './NameFields'

type CultivarFormProps = {
  /** Null: a new one. */
  cultivar: Cultivar | null
  /** How many are of it. */
  trees: number
  onDone: () => void
}

/** One cultivar; what nobody knows stays unknown. */
export function CultivarForm({ cultivar, trees, onDone }: CultivarFormProps) {
  const { ground } = useLeadWords()
  const send = useSend()
  const options = useSpeciesOptions()
  const mostCommon = useMostCommonSpecies()
  const { asked, isAsking, ask } = useAsk()
  const [typed, setTyped] = useState({
    species: cultivar?.species ?? mostCommon,
    name: cultivar?.name ?? '',
    habit: cultivar?.habit ?? ('unknown' as const),
    buds: cultivar?.buds ?? ('unknown' as const),
  })
  const [isTried, setIsTried] = useState(false)
  const lacksName = typed.name.trim() === ''
  const change = (changes: Partial<typeof typed>) => setTyped({ ...typed, ...changes })
  const save = () => {
    setIsTried(true)
    if (lacksName) return
    void ask(send('write_cultivar', { cultivar: cultivar?.no ?? null, ...typed }), onDone)
  }
  return (
    <div className="ground-part">
      {cultivar === null && (
        <SelectField
          label={ground.speciesOf}
          options={options}
          value={typed.species}
          onChange={(species) => change({ species })}
        />
      )}
      <TextField
        label={ground.cultivarName}
        value={typed.name}
        onChange={(name) => change({ name })}
        fault={isTried && lacksName && ground.cultivarNameFault}
        maxLength={60}
        autoComplete="off"
      />
      <SelectField
        label={ground.habit}
        options={habits.map((value) => ({ value, label: ground.habits[value] }))}
        value={typed.habit}
        onChange={(habit) => change({ habit: habits.find((one) => one === habit) ?? 'unknown' })}
      />
      <SelectField
        label={ground.buds}
        options={budSites.map((value) => ({ value, label: ground.budSites[value] }))}
        value={typed.buds}
        onChange={(buds) => change({ buds: budSites.find((one) => one === buds) ?? 'unknown' })}
      />
      <AskedNote asked={asked} />
      <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
        {ground.saveCultivar}
      </Button>
      {cultivar !== null && trees === 0 && (
        <Button
          state={isAsking ? 'waiting' : 'ready'}
          onPress={() => void ask(send('remove_cultivar', { cultivar: cultivar.no }), onDone)}
        >
          {ground.removeCultivar}
        </Button>
      )}
    </div>
  )
}
