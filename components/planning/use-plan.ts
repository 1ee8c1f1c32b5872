'use client'

import { useMemo } from 'react'

import { planShift, type ShiftPlan } from '@/lib/domain/planning/shift-plan'
import {
  type Reading,
  useDraft,
  useSelect,
  useWorkTimes,
  type WorkTimes,
  whoIsWhere,
} from '@/lib/hooks'
import { mayPrune } from '../crew/deal-choices'
import { nearTrees } from './near-trees'
import { type Planned, planAsked } from './plan-asked'
import { useShiftHours } from './use-shift-hours'

/** What a lead changed; everything else is as proposed. */
export type PlanChoices = {
  without: readonly string[]
  notIn: readonly number[]
  /** Earlier or later than the end of the shift or the light. */
  byMinutes: number
  /** The first person of each team that gets nothing. */
  notFor: readonly string[]
}

const asProposed: PlanChoices = { without: [], notIn: [], byMinutes: 0, notFor: [] }

export type Planning = {
  plan: ShiftPlan
  planned: Planned
  people: readonly string[]
  choices: PlanChoices
  change: (some: Partial<PlanChoices>) => void
  endsMs: number
}

type PlanToCome = {
  /** Null until all that it asks for is here, or without a shift. */
  planning: Planning | null
  times: Reading<WorkTimes>
}

/** The plan of now. */
export function usePlan(): PlanToCome {
  const state = useSelect((view) => view.state)
  const sheet = useSelect((view) => view.sheet)
  const ground = useSelect((view) => view.ground)
  const people = useSelect((view) =>
    whoIsWhere(view)
      .map(({ personId }) => personId)
      .filter((id) => view.state?.people[id]?.role === 'volunteer' && mayPrune(view, id))
      .toSorted((a, b) => (view.names[a] ?? '').localeCompare(view.names[b] ?? ''))
  )
  const times = useWorkTimes()
  const hours = useShiftHours()
  const draft = useDraft<PlanChoices>(`plan|${hours?.shift.id}`, asProposed)
  const choices = draft.value
  const apartM = state?.orchard.houseRules.overhead_apart_m ?? 0
  const near = useMemo(() => nearTrees(ground, apartM), [ground, apartM])
  const read = times.state === 'read' ? times.value : null

  const made = useMemo(() => {
    if (!state || !sheet || !read || !hours) return null
    const { shift, today, nowMs } = hours
    const endsMs = Math.max(nowMs, hours.endsMs + choices.byMinutes * 60_000)
    const planned = planAsked({
      ...{ state, sheet, ground, shift, today, nowMs, endsMs, near, times: read },
      people: people.filter((id) => !choices.without.includes(id)),
      blocks: new Set(sheet.blocks.map(({ no }) => no).filter((no) => !choices.notIn.includes(no))),
    })
    return { plan: planShift(planned.asked), planned, endsMs }
  }, [state, sheet, ground, people, read, hours, choices, near])
  const change: Planning['change'] = (some) => draft.write({ ...choices, ...some })
  return { planning: made && { ...made, people, choices, change }, times }
}
