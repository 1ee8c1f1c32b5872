'use client'

import { useState } from 'react'

import type { BudSite } from '@/lib/domain/orchard/types'
import { type LastYearsWood, lastYearsWood, tipShoot } from '@/lib/domain/pruning/last-years-wood'
import {
  readCounts,
  type ShootVerdict,
  siteOf,
  verdictOf,
} from '@/lib/domain/pruning/shoot-verdict'
import { type BudCounts, usualBuds } from '@/lib/domain/pruning/shorten'
import { bearingOf, type WorkCard } from '@/lib/domain/pruning/work-card'
import type { TreeFacts } from '../tree/use-tree'

export const profiles = ['base', 'middle', 'tip', 'counted'] as const
export type Profile = (typeof profiles)[number]

/** What the card of this tree says about its shoots; a young tree's are the lead's. */
export function shootsOf({ steps }: WorkCard): LastYearsWood | 'in_training' {
  const last = steps.at(-1)
  return last?.code === 'last_years_wood' ? last.what : 'in_training'
}

/**
 * A shoot of this tree: where its buds sit, from the cultivar or as a lead says or counts, and whether so
 * much of it may go.
 */
export function useShoot({ tree, cultivar }: TreeFacts, what: LastYearsWood | 'in_training') {
  const known = bearingOf(cultivar)
  const [profile, setProfile] = useState<Profile | null>(
    known.buds === 'unknown' ? null : known.buds
  )
  const [typed, setTyped] = useState('')
  const counted = readCounts(typed)
  const counts = countsOf(profile, counted)
  const buds: BudSite =
    profile === 'counted' ? (counted ? siteOf(counted) : 'unknown') : (profile ?? 'unknown')
  const bearing = { species: tree.species, habit: known.habit, buds }
  const isHeldBack = what === 'in_training' || what === 'another_winter'

  return {
    profile,
    setProfile,
    typed,
    setTyped,
    isTypedWrong: profile === 'counted' && typed.trim() !== '' && counted === null,
    /** Null: nobody has said where the buds sit. */
    counts,
    bearing,
    verdict: (taken: number): ShootVerdict => (isHeldBack ? 'refused' : verdictOf(bearing, taken)),
    /** Of one so long; null: its length does not matter. */
    tipVerdict: (shootCm: number) =>
      isHeldBack || lastYearsWood(bearing) !== 'leave_short'
        ? null
        : tipShoot(bearing.species, shootCm),
  }
}

function countsOf(profile: Profile | null, counted: BudCounts | null): BudCounts | null {
  if (profile === null) return null
  return profile === 'counted' ? counted : usualBuds[profile]
}
