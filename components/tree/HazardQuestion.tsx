'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'
import { Tile } from '../ui/Tile'
import { HazardDrawing } from './drawings/HazardDrawing'
import type { FlagDraft } from './flag-draft'
import { hazardSigns } from './flag-words'

type HazardQuestionProps = {
  flag: FlagDraft
  onChange: (part: Partial<FlagDraft>) => void
}

/** First move away, then one question in pictures. "Not sure" is an answer, too. */
export function HazardQuestion({ flag, onChange }: HazardQuestionProps) {
  const { flag: text } = useWords()
  return (
    <>
      <Note icon="warn" tone="stop" role="alert" lead={text.hazard.stepOut} />
      <h1>{text.hazard.title}</h1>
      <ChoiceGroup label={text.hazard.title} hideLabel as="tiles">
        {hazardSigns.map((sign) => (
          <Tile
            key={sign}
            type="radio"
            name="hazard"
            checked={flag.hazard === sign}
            onChange={() => onChange({ hazard: sign })}
            art={sign !== 'other' && <HazardDrawing sign={sign} />}
          >
            {text.hazard[sign]}
          </Tile>
        ))}
      </ChoiceGroup>
      <p className="small">{text.neverYours}</p>
    </>
  )
}
