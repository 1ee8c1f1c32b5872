'use client'

import { useMemo } from 'react'

import type { Case } from '@/lib/domain/disease/scouting'
import { type Survey, type SurveyAsked, survey } from '@/lib/domain/disease/survey'
import { useNow, useSelect, useWorkerAnswer } from '@/lib/hooks'
import { casesOf, type Question } from './question'

export type Surveyed = {
  /** The last that was found; null until the first. */
  found: Survey | null
  isCounting: boolean
  /** In the block that is asked for. */
  cases: readonly Case[]
}

/** Any seed would do, as long as two tablets say the same. */
const seed = 1

const asking = {
  open: () => new Worker(new URL('./survey-worker.ts', import.meta.url)),
  here: survey,
}

/** What the flags of now say to a question; null asks nothing. A change of flags asks anew. */
export function useSurvey(question: Question | null): Surveyed {
  const flags = useSelect((view) => view.state?.flags)
  const sheet = useSelect((view) => view.sheet)
  const now = useNow(3_600_000)
  const year = (now ?? new Date()).getFullYear()
  const cases = useMemo(
    () => (flags && question ? casesOf(flags, question) : []),
    [flags, question]
  )
  const asked = useMemo((): SurveyAsked | null => {
    if (!sheet || !flags || !question) return null
    const { trees, blocks } = sheet
    const known = Object.values(flags).flatMap(({ kind, tree, sign, severity, state }) =>
      kind === 'disease' ? [{ no: tree, sign, severity, confirmed: state === 'confirmed' }] : []
    )
    const { block, rings } = question
    return { trees, blocks, cases, known, block, rings, year, seed }
  }, [sheet, flags, question, cases, year])
  const told = useWorkerAnswer(asking, asked)

  const inBlock = useMemo(() => {
    if (!question || question.block === null) return cases
    const own = new Set(
      sheet?.trees.flatMap((tree) => (tree.block === question.block ? [tree.no] : []))
    )
    return cases.filter(({ no }) => own.has(no))
  }, [cases, question, sheet])
  return {
    found: asked ? (told?.answer ?? null) : null,
    // Also until the trees have come to this device.
    isCounting: question !== null && (asked === null || told?.to !== asked),
    cases: inBlock,
  }
}
