'use client'

import { useNow, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import { useCloseWatch } from '../weather/use-close-watch'
import { useShiftOnPaper } from './use-shift-on-paper'

const nobody: ReadonlyMap<string, number> = new Map()

/** The day of work of whoever is new then, for a warm day and for any of a summer round: paper is printed before. */
export function useNewOnPaper(people: readonly string[]): ReadonlyMap<string, number> {
  const shift = useShiftOnPaper()
  const round = useSelect(({ state }) => state?.rounds[shift?.roundId ?? '']?.kind)
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const now = useNow(60_000)
  const watch = useCloseWatch(shift?.date ?? dayIn(zone, now ?? new Date(0)), people)
  if (!watch?.newPeople || !(watch.isWarm || round === 'summer')) return nobody
  return new Map(watch.newPeople.map(({ id, day }) => [id, day]))
}
