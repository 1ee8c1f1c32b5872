'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'

export type How = 'heard' | 'read_to_me' | 'read'

const hows: readonly How[] = ['heard', 'read_to_me', 'read']

type HowHeardProps = { value: How | null; onChange: (how: How) => void }

/** In which way the briefing reached who signs it. */
export function HowHeard({ value, onChange }: HowHeardProps) {
  const { briefing } = useWords()
  const words = {
    heard: briefing.heard,
    read_to_me: briefing.readToMe,
    read: briefing.readMyself,
  }
  return (
    <ChoiceGroup label={briefing.howHeard} as="picks">
      {hows.map((how) => (
        <Pick
          key={how}
          type="radio"
          name="how"
          checked={how === value}
          onChange={() => onChange(how)}
        >
          {words[how]}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
