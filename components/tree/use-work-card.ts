'use client'

import { bearingOf, type WorkCard, workCard } from '@/lib/domain/pruning/work-card'
import { openShift } from '@/lib/events/look-ups'
import { useDraft, useNow, useSelect } from '@/lib/hooks'
import type { TreeFacts } from './use-tree'

/** The steps for one tree on this day, and whether it looks as if nobody had pruned it for years. */
export function useWorkCard({ tree, cultivar }: TreeFacts) {
  const today = useToday()
  const isTrainingRound = useRoundKind() === 'training'
  // What one sees of a tree stays with who looks at it; the lead sees the same tree.
  const neglected = useDraft(`neglected-${tree.no}`, false)
  const card: WorkCard = workCard({
    species: tree.species,
    ...bearingOf(cultivar),
    plantedYear: tree.plantedYear,
    sizeClass: tree.sizeClass,
    isNeglected: neglected.value,
    isTrainingRound,
    thisYear: today.getUTCFullYear(),
    month: today.getUTCMonth() + 1,
  })
  return { card, isNeglected: neglected.value, setNeglected: neglected.write }
}

/** Of the round that the open shift works in; null outside a shift. */
export function useRoundKind() {
  return useSelect(({ state }) => {
    const shift = state && openShift(state)
    return shift ? (state.rounds[shift.roundId]?.kind ?? null) : null
  })
}

/** Near enough for a month and a year. */
export function useToday(): Date {
  const now = useNow(3_600_000)
  const startsAt = useSelect((view) => Object.values(view.state?.shifts ?? {})[0]?.startsAt)
  return now ?? new Date(startsAt ?? 0)
}
