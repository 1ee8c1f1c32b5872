'use client'

import { useMemo } from 'react'

import { stands } from '@/lib/domain/orchard/types'
import { looksOf, useDraft, useSelect } from '@/lib/hooks'
import { countChoices, isShown, type MapFilter, noFilter } from './map-filter'

const nothing: ReadonlySet<number> = new Set()

/** The filter of this device; it outlives other screens and a reload. */
export function useMapFilter() {
  const draft = useDraft<MapFilter>('map-filter', noFilter)
  const filter = draft.value
  const choices = countChoices(filter)
  const trees = useSelect((view) => view.sheet?.trees)
  const looks = useSelect(looksOf)
  const state = useSelect((view) => view.state)

  const dimmed = useMemo(() => {
    if (countChoices(filter) === 0 || !state) return nothing
    const held = new Set(Object.values(state.claims).map(({ tree }) => tree))
    const out = (trees ?? []).filter((tree) => {
      const look = looks.get(tree.no)
      const isDealt = Object.hasOwn(state.deals, tree.no)
      const facts = { isHeld: held.has(tree.no), isDealt, work: state.work[tree.no] }
      return look !== undefined && !isShown(filter, tree, look, facts)
    })
    return new Set(out.map(({ no }) => no))
  }, [filter, trees, looks, state])
  const all = useMemo(() => (trees ?? []).filter(stands).length, [trees])

  return {
    filter,
    choices,
    dimmed,
    all,
    shown: all - dimmed.size,
    change: draft.write,
    clear: () => draft.write(noFilter),
  }
}

export type MapFilterNow = ReturnType<typeof useMapFilter>
