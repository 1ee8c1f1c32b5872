'use client'

import { useMemo } from 'react'

import { ofTheDay } from '@/lib/events/weather'
import { lacksByPerson, readinessOf, useNow, useSelect, type View, whoIsWhere } from '@/lib/hooks'
import { useNameOf } from '../sync/use-refusal-words'
import { type CrewLine, crewInOrder } from './crew-order'
import type { Heard } from './HeardEachMinute'

const usualQuietMinutes = 15
/** What is missing before a claim, though it says that all is well. */
const isFine = ['holds_another', 'stopped', 'on_break', ...ofTheDay]

/** Everybody who is here, who needs somebody first. */
export function useCrewLines(heard: Heard | null): CrewLine[] {
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
  const lacks = useSelect(lacksByPerson)
  const people = useSelect((view) => view.state?.people)
  const state = useSelect((view) => view.state)
  const calling = new Set(Object.values(state?.calls ?? {}).map(({ calledBy }) => calledBy))
  const dealt = useMemo(() => dealtTrees(state), [state])
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
    isCalling: (id) => calling.has(id),
    hazardBy: new Map(hazards.map(({ raisedBy, tree }) => [raisedBy, tree])),
    lackOf: (id) => lacks.get(id)?.kind ?? null,
    toGo: (id) => dealt.get(id) ?? 0,
    isReady: (id) => !notReady.includes(id),
    nameOf,
  })
}

/** Person → how many trees are kept for them that nobody has begun. */
function dealtTrees(state: View['state']): ReadonlyMap<string, number> {
  const held = new Set(Object.values(state?.claims ?? {}).map(({ tree }) => tree))
  const found = new Map<string, number>()
  for (const [tree, to] of Object.entries(state?.deals ?? {})) {
    if (held.has(Number(tree)) || state?.work[tree]?.state === 'done') continue
    for (const id of to) found.set(id, (found.get(id) ?? 0) + 1)
  }
  return found
}
