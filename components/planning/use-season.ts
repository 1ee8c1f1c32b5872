'use client'

import { useMemo } from 'react'

import { type DryDays, dryDaysIn } from '@/lib/domain/planning/dry-days'
import { type Season, type SeasonAsked, seasonOf } from '@/lib/domain/planning/season'
import { readHourly } from '@/lib/domain/safety/hourly-csv'
import { type Reading, useDraft, useSelect, useWorkTimes, type WorkTimes } from '@/lib/hooks'
import { useLanguage } from '../layout/Words'
import { type Supposed, seasonAsked, usualSeason } from './season-asked'

type Draft = Supposed & { pasted: string }

export type SeasonToCome = {
  /** Null: what it asks for has not come yet. */
  told: { season: Season; asked: SeasonAsked } | null
  times: Reading<WorkTimes>
  supposed: Draft
  counted: DryDays
  change: (some: Partial<Draft>) => void
}

/** The season by what is supposed for it, anew with each change. */
export function useSeason(): SeasonToCome {
  const draft = useDraft<Draft>('season', { ...usualSeason, pasted: '' })
  const supposed = draft.value
  const state = useSelect((view) => view.state)
  const sheet = useSelect((view) => view.sheet)
  const ground = useSelect((view) => view.ground)
  const isUs = useSelect((view) => view.state?.orchard.units === 'us')
  const language = useLanguage()
  const times = useWorkTimes()
  const read = times.state === 'read' ? times.value : null
  const months = useMemo(
    () => dryDaysIn(readHourly(supposed.pasted, { dayFirst: !isUs || language === 'es' }).rows),
    [supposed.pasted, isUs, language]
  )
  const told = useMemo(() => {
    if (!state || !sheet || !read) return null
    const asked = seasonAsked({ state, sheet, ground, times: read, supposed, counted: months })
    return { season: seasonOf(asked), asked }
  }, [state, sheet, ground, read, supposed, months])
  const counted = [...months.values()].reduce(
    (sum, { days, dry }) => ({ days: sum.days + days, dry: sum.dry + dry }),
    { days: 0, dry: 0 }
  )
  return { told, times, supposed, counted, change: (some) => draft.write({ ...supposed, ...some }) }
}
