'use client'

import './disease.css'

import { useMemo } from 'react'

import { useDraft, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { DealBar } from '../crew/DealBar'
import { DealtNote } from '../crew/DealtNote'
import { LeadScreen } from '../crew/LeadScreen'
import { useDealing } from '../crew/use-dealing'
import { useLeadWords } from '../crew/use-lead-words'
import { useGo } from '../layout/use-go'
import { Note } from '../ui/Note'
import { DiseaseMap } from './DiseaseMap'
import { DiseaseQuestion } from './DiseaseQuestion'
import { diseaseShown } from './disease-shown'
import { FiguresBehind } from './FiguresBehind'
import { Finding } from './Finding'
import { firstQuestion, type Question } from './question'
import { ReplaceList } from './ReplaceList'
import { ScoutingList } from './ScoutingList'
import { ScoutingPaper } from './ScoutingPaper'
import { useSurvey } from './use-survey'

const nothingDimmed: ReadonlySet<number> = new Set()

/** Is it clustered, and where to look next: one sentence, the map, and a list that can be dealt or printed. */
export function DiseaseScreen() {
  const { disease } = useLeadWords()
  const go = useGo()
  const draft = useDraft<Question>('disease', firstQuestion)
  const surveyed = useSurvey(draft.value)
  const dealing = useDealing(nothingDimmed)
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const { found, cases } = surveyed
  const shown = useMemo(() => diseaseShown(cases, found), [cases, found])
  const where = blocks.find(({ no }) => no === draft.value.block)?.name ?? disease.everywhere

  return (
    <LeadScreen
      here="map"
      fill
      sideLabel={disease.title}
      side={
        <div className="disease-side">
          <DiseaseQuestion question={draft.value} onChange={draft.write} />
          {found && (
            <>
              <ScoutingList toScout={found.toScout} dealing={dealing} />
              <FiguresBehind survey={found} />
              <ReplaceList toReplace={found.toReplace} />
            </>
          )}
          <Note>{disease.fromFlags}</Note>
        </div>
      }
      deal={
        dealing.isPicking ? (
          <DealBar dealing={dealing} />
        ) : (
          dealing.dealt && <DealtNote dealt={dealing.dealt} />
        )
      }
    >
      <div className="disease">
        <Finding surveyed={surveyed} />
        <DiseaseMap shown={shown} dealing={dealing} onTree={(no) => go.push(routes.map(no))} />
        {found && found.toScout.length > 0 && (
          <ScoutingPaper toScout={found.toScout} where={where} />
        )}
      </div>
    </LeadScreen>
  )
}
