'use client'

import './disease.css'

import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { ButtonLink } from '../ui/ButtonLink'
import type { DiseaseMode } from './use-disease-mode'
import { usePatternWords } from './use-pattern-words'

/** While the disease lies over the live map: the sentence about it, which leads to all the rest. */
export function DiseaseOnMap({ mode }: { mode: DiseaseMode }) {
  const { disease } = useLeadWords()
  const words = usePatternWords()
  const { found } = mode.surveyed
  if (!mode.isOn) return null
  return (
    <p className="disease-on-map" role="status">
      <ButtonLink href={routes.disease()} label={disease.toMap} sub={disease.toMap}>
        {found ? words(found).headline : disease.counting}
      </ButtonLink>
    </p>
  )
}
