'use client'

import { useState } from 'react'

import { type ToldCultivar, toldCultivars } from '@/lib/domain/orchard/inventory-changes'
import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import { useSend } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { Panel } from '../ui/Panel'
import type { Reading } from './reading'

type CultivarsToldProps = { reading: Reading; existing: Inventory }

/** Cultivars of the orchard of which the file says other fruit buds; one changes only where it is ticked. */
export function CultivarsTold({ reading, existing }: CultivarsToldProps) {
  const words = useWords()
  const { bringIn: text, ground } = useLeadWords()
  const send = useSend()
  const { asked, isAsking, ask } = useAsk()
  const [ticked, setTicked] = useState<ReadonlySet<number>>(new Set())
  const told = toldCultivars(reading.rows, existing.cultivars)
  const chosen = told.filter(({ cultivar }) => ticked.has(cultivar.no))
  if (told.length === 0) return null

  const tick = (no: number, isOn: boolean) =>
    setTicked(new Set(isOn ? [...ticked, no] : [...ticked].filter((one) => one !== no)))
  const changesOf = ({ cultivar, to }: ToldCultivar) =>
    [
      cultivar.habit !== to.habit &&
        `${ground.habit} ${ground.habits[cultivar.habit]} → ${ground.habits[to.habit]}`,
      cultivar.buds !== to.buds &&
        `${ground.buds} ${ground.budSites[cultivar.buds]} → ${ground.budSites[to.buds]}`,
    ]
      .filter(Boolean)
      .join(' · ')
  // One after the other: the first that is refused is told, and the rest stays to be tried again.
  const change = async () => {
    for (const { cultivar, to } of chosen) {
      const { no, species, name } = cultivar
      await ask(send('write_cultivar', { cultivar: no, species, name, ...to }))
    }
  }
  return (
    <Panel title={text.cultivarsTold(told.length)}>
      <div className="stack">
        <p>{text.cultivarsLead}</p>
        <div>
          {told.map((one) => (
            <CheckRow
              key={one.cultivar.no}
              checked={ticked.has(one.cultivar.no)}
              onChange={(isOn) => tick(one.cultivar.no, isOn)}
              hint={changesOf(one)}
            >
              {one.cultivar.name}, {speciesWords(words, one.cultivar.species).name}
            </CheckRow>
          ))}
        </div>
        <AskedNote asked={asked} />
        {chosen.length > 0 && (
          <Button state={isAsking ? 'waiting' : 'ready'} onPress={() => void change()}>
            {text.changeCultivars(chosen.length)}
          </Button>
        )}
      </div>
    </Panel>
  )
}
