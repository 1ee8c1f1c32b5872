'use client'

import { useId } from 'react'

import type { OffReason } from '@/lib/events/state'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'
import { type Offs, offReasons, usualReason } from './offs'

type OffListProps = {
  species: readonly string[]
  offs: Offs
  /** Null: may be pruned again. */
  onChange: (what: string, reason: OffReason | null) => void
}

/** Each kind of tree of the round, and ladders: ticked is off, with its reason. */
export function OffList({ species, offs, onChange }: OffListProps) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  const rows = [
    ...species.map((one) => ({ what: one, word: speciesWords(words, one).many })),
    { what: 'ladder', word: text.offLadders },
  ]
  return (
    <ul className="offs" aria-label={text.offToday}>
      {rows.map(({ what, word }) => {
        const reason = offs[what]
        return (
          <li key={what}>
            {reason === 'season' ? (
              <SeasonRow what={word} />
            ) : (
              <CheckRow
                checked={reason !== undefined}
                onChange={(isOff) => onChange(what, isOff ? usualReason(what) : null)}
                hint={what === 'ladder' ? text.offLaddersNote : undefined}
              >
                {capitalised(word)}:{' '}
                {reason !== undefined
                  ? text.isOff(words.things.offReason[reason])
                  : what === 'ladder'
                    ? text.laddersOn
                    : text.isOn}
              </CheckRow>
            )}
            {reason !== undefined && reason !== 'season' && (
              <Reasons what={word} value={reason} onChange={(next) => onChange(what, next)} />
            )}
          </li>
        )
      })}
    </ul>
  )
}

/** By the calendar: nothing to tick. A lead makes an exception, and says why. */
function SeasonRow({ what }: { what: string }) {
  const words = useWords()
  const { shift: text } = useLeadWords()
  return (
    <Note icon="lock" lead={`${capitalised(what)}: ${text.isOff(words.things.offReason.season)}`}>
      {text.offSeason} {text.offSeasonSource}
    </Note>
  )
}

type ReasonsProps = {
  what: string
  value: OffReason
  onChange: (reason: OffReason) => void
}

function Reasons({ what, value, onChange }: ReasonsProps) {
  const { shift: text } = useLeadWords()
  const name = useId()
  return (
    <ChoiceGroup label={text.because(what)} hideLabel as="picks">
      {offReasons.map((reason) => (
        <Pick
          key={reason}
          type="radio"
          low
          name={name}
          checked={reason === value}
          onChange={() => onChange(reason)}
        >
          {text.reasons[reason]}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
