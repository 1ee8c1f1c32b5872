/** A whole orchard, out and in: what does it is fetched then. */

import type { Backend } from '@/lib/data/backend'
import type { ArgsOf } from '@/lib/events/commands'
import type { Random } from '@/lib/sync/ports'

import type { ArchiveIn } from './archive-in'
import type { TakenOut } from './archive-out'
import type { HoursOut } from './hours-out'
import type { Sent } from './sent'

export type Archives = {
  bringInOrchard: (archive: ArchiveIn) => Promise<Sent>
  /** Of these tables, or (null) all there are. */
  takeOut: (
    orchardId: string,
    tables: readonly string[] | null,
    onPart?: (rows: number) => void
  ) => Promise<TakenOut>
  /** Of all seasons. */
  takeHours: (orchardId: string) => Promise<HoursOut>
}

export function archivesOf(
  backend: Backend,
  random: Random,
  getIn: (args: ArgsOf<'bring_in_orchard'>, id: string) => Promise<Sent>
): Archives {
  return {
    bringInOrchard: async (archive) => {
      const { archiveIn } = await import('./archive-in')
      const id = random.id()
      return archiveIn(archive, { backend, id, getIn: (args) => getIn(args, id) })
    },
    takeOut: async (orchardId, tables, onPart) => {
      const { archiveOut } = await import('./archive-out')
      return archiveOut(backend, orchardId, { tables, onPart })
    },
    takeHours: async (orchardId) => {
      const { hoursOut } = await import('./hours-out')
      return hoursOut(backend, orchardId)
    },
  }
}
