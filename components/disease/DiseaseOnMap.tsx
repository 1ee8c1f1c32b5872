'use client'

import './disease.css'

import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import type { DiseaseMode } from './use-disease-mode'
import { usePatternWords } from './use-pattern-words'

/** Puts the disease over the live map; then says the sentence, which leads to all the rest. */
export function DiseaseOnMap({ mode }: { mode: DiseaseMode }) {
  const { disease } = useLeadWords()
  const words = usePatternWords()
  const { found } = mode.surveyed
  return (
    <>
      <Button onPress={mode.toggle}>{mode.isOn ? disease.offMap : disease.onMap}</Button>
      {mode.isOn && (
        <p className="disease-on-map" role="status">
          <ButtonLink href={routes.disease()} label={disease.toMap} sub={disease.toMap}>
            {found ? words(found).headline : disease.counting}
          </ButtonLink>
        </p>
      )}
    </>
  )
}
