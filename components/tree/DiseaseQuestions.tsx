'use client'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { Segmented } from '../ui/Segmented'
import { Tile } from '../ui/Tile'
import { DiseaseDrawing } from './drawings/DiseaseDrawing'
import type { FlagDraft } from './flag-draft'
import { diseaseSigns, flagPlaces } from './flag-words'

type DiseaseQuestionsProps = {
  flag: FlagDraft
  onChange: (part: Partial<FlagDraft>) => void
}

/** Which sign, how bad, where. Only the sign has to be said. */
export function DiseaseQuestions({ flag, onChange }: DiseaseQuestionsProps) {
  const { flag: text, things } = useWords()
  return (
    <>
      <h1>{text.disease.title}</h1>
      <ChoiceGroup label={text.disease.title} hideLabel as="tiles">
        {diseaseSigns.map((sign) => (
          <Tile
            key={sign}
            type="radio"
            name="sign"
            checked={flag.disease === sign}
            onChange={() => onChange({ disease: sign })}
            art={sign !== 'other' && <DiseaseDrawing sign={sign} />}
          >
            {text.disease[sign]}
          </Tile>
        ))}
      </ChoiceGroup>
      <Segmented
        label={text.howBad}
        options={[
          { value: 'low', label: things.severity.low },
          { value: 'high', label: things.severity.high },
        ]}
        value={flag.severity}
        onChange={(severity) => onChange({ severity })}
      />
      <ChoiceGroup label={text.where} as="picks">
        {flagPlaces.map((place) => (
          <Pick
            key={place}
            type="radio"
            name="place"
            checked={flag.place === place}
            onChange={() => onChange({ place })}
          >
            {text.places[place]}
          </Pick>
        ))}
      </ChoiceGroup>
    </>
  )
}
