'use client'

import { useMemo } from 'react'

import { useDraft } from '@/lib/hooks'
import { diseaseShown } from './disease-shown'
import { firstQuestion } from './question'
import { useSurvey } from './use-survey'

/** The disease over the live map, on or off; all of it, in the whole orchard. */
export function useDiseaseMode() {
  const draft = useDraft('disease-on-map', false)
  const isOn = draft.value
  const surveyed = useSurvey(isOn ? firstQuestion : null)
  const { cases, found } = surveyed
  const shown = useMemo(() => (isOn ? diseaseShown(cases, found) : null), [isOn, cases, found])
  return { isOn, shown, surveyed, toggle: () => draft.write(!isOn) }
}

export type DiseaseMode = ReturnType<typeof useDiseaseMode>
