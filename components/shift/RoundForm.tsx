'use client'

import { useId } from 'react'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { capitalised, speciesWords } from '@/lib/text/species'
import { AskedNote } from '../crew/AskedNote'
import { NoTrees } from '../crew/NoTrees'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { Why } from '../ui/Why'
import {
  type NewRound,
  proposedRound,
  roundArgs,
  roundKinds,
  roundLacks,
  speciesHere,
} from './new-round'

type RoundFormProps = { today: string; onOpened?: () => void }

/** Opens a round: which kinds of trees are pruned in which weeks. */
export function RoundForm({ today, onOpened }: RoundFormProps) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  const send = useSend()
  const kindName = useId()
  const here = useSelect(speciesHere)
  const draft = useDraft<NewRound | null>('round', null)
  const { wasTried, tried } = useTries()
  const { asked, ask } = useAsk()
  const round = draft.value ?? proposedRound(today, here)
  const lacks = wasTried ? roundLacks(round) : []
  const change = (part: Partial<NewRound>) => draft.write({ ...round, ...part })

  const open = () => {
    tried()
    if (roundLacks(round).length > 0) return
    void ask(send('open_round', roundArgs(round)), () => {
      draft.drop()
      onOpened?.()
    })
  }
  if (here.length === 0) return <NoTrees />
  return (
    <div className="stack">
      <p>{text.roundTitle}</p>
      <ChoiceGroup label={text.kindLabel} as="picks">
        {roundKinds.map((kind) => (
          <Pick
            key={kind}
            type="radio"
            name={kindName}
            checked={round.kind === kind}
            onChange={() => change({ kind })}
          >
            {text.kinds[kind]}
          </Pick>
        ))}
      </ChoiceGroup>
      <ChoiceGroup label={text.speciesLabel} as="picks">
        {here.map((species) => (
          <Pick
            key={species}
            type="checkbox"
            checked={round.species.includes(species)}
            onChange={(isOn) =>
              change({
                species: isOn
                  ? [...round.species, species]
                  : round.species.filter((one) => one !== species),
              })
            }
          >
            {capitalised(speciesWords(words, species).many)}
          </Pick>
        ))}
      </ChoiceGroup>
      {lacks.includes('species') && <Why tone="wrong">{text.chooseSpecies}</Why>}
      <div className="fields">
        <TextField
          label={text.season}
          inputMode="numeric"
          maxLength={4}
          value={round.season}
          onChange={(season) => change({ season })}
          fault={lacks.includes('season') && text.writeSeason}
        />
        <TextField
          label={text.firstDay}
          type="date"
          value={round.from}
          onChange={(from) => change({ from })}
        />
        <TextField
          label={text.lastDay}
          type="date"
          value={round.to}
          onChange={(to) => change({ to })}
          fault={lacks.includes('days') && text.writeDays}
        />
      </div>
      <AskedNote asked={asked} />
      <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={open}>
        {text.openRound}
      </Button>
    </div>
  )
}
