'use client'

import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'

type FaultTicksProps = {
  label: string
  items: readonly { code: string; word: string }[]
  ticked: readonly string[]
  onChange: (ticked: string[]) => void
}

/** What is not in order, by ticks. */
export function FaultTicks({ label, items, ticked, onChange }: FaultTicksProps) {
  return (
    <ChoiceGroup label={label} as="checks">
      {items.map(({ code, word }) => (
        <CheckRow
          key={code}
          checked={ticked.includes(code)}
          onChange={(isWrong) =>
            onChange(isWrong ? [...ticked, code] : ticked.filter((one) => one !== code))
          }
        >
          {word}
        </CheckRow>
      ))}
    </ChoiceGroup>
  )
}
