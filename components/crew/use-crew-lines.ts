'use client'

import { readinessOf, useNow, useSelect, whoIsWhere } from '@/lib/hooks'
import { useNameOf } from '../sync/use-refusal-words'
import { type CrewLine, crewInOrder } from './crew-order'
import type { Heard } from './HeardEachMinute'

const usualQuietMinutes = 15
/** What is missing before a claim, though it says that all is well. */
const isFine = ['holds_another', 'stopped', 'on_break']

/** Everybody who is here, who needs somebody first. */
export function useCrewLines(heard: Heard): CrewLine[] {
  const now = useNow(30_000)
  const nameOf = useNameOf()
  const where = useSelect(whoIsWhere)
  const flags = useSelect((view) => view.state?.flags)
  const quietMinutes = useSelect(
    (view) => view.state?.orchard.houseRules.quiet_minutes ?? usualQuietMinutes
  )
  const notReady = useSelect((view) =>
    whoIsWhere(view)
      .map(({ personId }) => personId)
      .filter((id) => readinessOf(view, id).some(({ code }) => !isFine.includes(code)))
  )
  const people = useSelect((view) => view.state?.people)
  if (!now) return []
  // A lead who flags knows what to do next.
  const hazards = Object.values(flags ?? {}).filter(
    ({ kind, raisedBy }) => kind === 'arborist' && people?.[raisedBy]?.role === 'volunteer'
  )
  return crewInOrder({
    where,
    now,
    heardAt: heard,
    quietMinutes,
    hazardBy: new Map(hazards.map(({ raisedBy, tree }) => [raisedBy, tree])),
    isReady: (id) => !notReady.includes(id),
    nameOf,
  })
}
