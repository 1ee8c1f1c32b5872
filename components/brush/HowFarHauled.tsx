'use client'

import { useId } from 'react'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { SelectField } from '../ui/SelectField'
import type { HowFar } from './how-far'

type HowFarHauledProps = {
  places: readonly number[]
  value: HowFar
  onChange: (value: HowFar) => void
}

/** All, a part from tree to tree, or nothing yet. */
export function HowFarHauled({ places, value, onChange }: HowFarHauledProps) {
  const { brush } = useWords()
  const name = useId()
  const options = places.map((place) => ({ value: String(place), label: String(place) }))
  return (
    <>
      <ChoiceGroup label={brush.stillLies} as="picks">
        {(['all', 'part', 'nothing'] as const).map((how) => (
          <Pick
            key={how}
            type="radio"
            name={name}
            checked={value.how === how}
            onChange={() => onChange({ ...value, how })}
          >
            {brush[how]}
          </Pick>
        ))}
      </ChoiceGroup>
      {value.how === 'part' && (
        <div className="row wrap">
          <SelectField
            label={brush.from}
            options={options}
            value={String(value.from)}
            onChange={(from) => onChange({ ...value, from: Number(from) })}
          />
          <SelectField
            label={brush.to}
            options={options}
            value={String(value.to)}
            onChange={(to) => onChange({ ...value, to: Number(to) })}
          />
        </div>
      )}
    </>
  )
}
