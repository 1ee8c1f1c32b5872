/** The hours of all seasons, one read a season. Fetched when a manager takes them out. */

import type { Backend } from '@/lib/data/backend'
import { readsOfRooms, type VolunteerHours } from '@/lib/data/rooms'
import type { Outcome } from '@/lib/events/answer'

export type HoursOut = Outcome<Pick<VolunteerHours, 'shifts' | 'names'>>

export async function hoursOut(
  backend: Pick<Backend, 'read'>,
  orchardId: string
): Promise<HoursOut> {
  const { volunteerHours } = readsOfRooms(backend.read)
  const newest = await volunteerHours(orchardId, null)
  if (!newest.ok) return newest
  let { shifts, names } = newest.value
  for (const season of newest.value.seasons) {
    if (season === newest.value.season) continue
    const older = await volunteerHours(orchardId, season)
    if (!older.ok) return older
    shifts = [...older.value.shifts, ...shifts]
    names = { ...older.value.names, ...names }
  }
  return { ok: true, value: { shifts, names } }
}
