'use client'

/** What managers look up, and the history of a tree. None of it is kept on the device but one's own hours. */

import type {
  AerialRead,
  AuditFilter,
  AuditTrail,
  BeforeForgetting,
  CloseWatchRead,
  ExceptionRead,
  Forecast,
  Invites,
  MyHours,
  PersonWhoLeft,
  RoundRead,
  ShiftRead,
  TreeHistory,
  VolunteerHours,
  WorkTimes,
} from '@/lib/state/reads'
import type { View } from '@/lib/state/view'

import { type Reading, useRead } from './use-read'
import { useSelect } from './use-select'

/** The picture from above, once somebody wants to see it; read again when it is another. */
export function useAerial(isWanted: boolean): Reading<AerialRead | null> {
  const version = useSelect((view) => view.confirmed?.orchard.aerialVersion ?? 0)
  return useRead(isWanted ? 'aerial' : null, (reads) => reads.aerial(), String(version))
}

/** Read again when something happens at this tree. */
export function useTreeHistory(tree: number): Reading<TreeHistory> {
  const version = useSelect(({ confirmed, names }) => {
    const flags = Object.values(confirmed?.flags ?? {}).filter((flag) => flag.tree === tree)
    const { work, marked, lookedOver } = confirmed ?? {}
    return JSON.stringify([
      work?.[tree],
      marked?.[tree],
      lookedOver?.[tree],
      flags,
      howManyNames({ names }),
    ])
  })
  return useRead(`history|${tree}`, (reads) => reads.treeHistory(tree), version)
}

/** `season` null: the newest. As it was when the screen was opened, but for a name that is forgotten. */
export function useVolunteerHours(season: number | null): Reading<VolunteerHours> {
  return useRead(
    `hours|${season}`,
    (reads) => reads.volunteerHours(season),
    useSelect(howManyNames)
  )
}

export function useMyHours(): Reading<MyHours> {
  const version = useSelect(({ state, me }) =>
    JSON.stringify(state?.attendance[me?.personId ?? ''])
  )
  return useRead('my-hours', (reads) => reads.myHours(), version)
}

/** For leads. Read again when a tree is done or left, or somebody comes or goes. */
export function useWorkTimes(): Reading<WorkTimes> {
  const version = useSelect(({ confirmed }) => {
    const work = Object.values(confirmed?.work ?? {})
    const begun = work.filter(({ state }) => state === 'begun').length
    return [work.length, begun, ...Object.keys(confirmed?.attendance ?? {})].join()
  })
  return useRead('work-times', (reads) => reads.workTimes(), version)
}

export function useInvites(): Reading<Invites> {
  return useRead('invites', (reads) => reads.invites(), useSelect(headOf))
}

export function useRounds(): Reading<RoundRead[]> {
  return useRead('rounds', (reads) => reads.rounds(), useSelect(roundsAndShifts))
}

export function useShifts(): Reading<ShiftRead[]> {
  return useRead('shifts', (reads) => reads.shifts(), useSelect(roundsAndShifts))
}

export function usePeopleWhoLeft(): Reading<PersonWhoLeft[]> {
  return useRead('left', (reads) => reads.peopleWhoLeft(), useSelect(headOf))
}

export function useBeforeForgetting(personId: string): Reading<BeforeForgetting> {
  return useRead(
    `forgetting|${personId}`,
    (reads) => reads.beforeForgetting(personId),
    useSelect(headOf)
  )
}

/** A page of what happened; the newest is read again as more happens. */
export function useAuditTrail(filter: AuditFilter): Reading<AuditTrail> {
  const head = useSelect(headOf)
  return useRead(
    `audit|${JSON.stringify(filter)}`,
    (reads) => reads.auditTrail(filter),
    filter.before === null ? head : ''
  )
}

/** One less when somebody is forgotten: what was read with the name is read again without it. */
function howManyNames({ names }: Pick<View, 'names'>): string {
  return String(Object.keys(names).length)
}

/** Whatever changes them is an event, and so the head is another. */
function headOf({ confirmed }: View): string {
  return String(confirmed?.head ?? 0)
}

function roundsAndShifts({ confirmed }: View): string {
  const shifts = Object.entries(confirmed?.shifts ?? {}).map(([id, { state }]) => `${id}${state}`)
  return [...Object.keys(confirmed?.rounds ?? {}), ...shifts].join()
}

/** The hours to come, read again when others are brought in. */
export function useForecast(): Reading<Forecast> {
  const version = useSelect((view) => view.confirmed?.forecast ?? '')
  return useRead('forecast', (reads) => reads.forecast(), version)
}

/** Read again on another day, when weather is written down, and when another round is worked in. */
export function useCloseWatchRead(today: string): Reading<CloseWatchRead> {
  const version = useSelect((view) =>
    [view.confirmed?.weather.latest?.measuredAt, today, roundsAndShifts(view)].join()
  )
  return useRead('close-watch', (reads) => reads.closeWatch(), version)
}

/** What leads excepted, with what they wrote; read again when one is made or ended. */
export function useExceptions(): Reading<ExceptionRead[]> {
  const version = useSelect((view) => JSON.stringify(view.confirmed?.exceptions ?? {}))
  return useRead('exceptions', (reads) => reads.exceptions(), version)
}
