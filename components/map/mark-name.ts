import { type Look, type Mark, markOf } from '@/lib/domain/orchard/status'

import type { MarkName } from '../ui/Mark'

export const markNames: Record<Mark, MarkName> = {
  unpruned: 'unpruned',
  in_progress: 'inProgress',
  done: 'done',
  disease: 'disease',
  arborist: 'arborist',
  held_by_me: 'mine',
  dealt_to_me: 'dealt',
  dealt: 'dealtToOther',
  closed: 'closed',
}

/** The mark in a list for what the map shows at a tree. */
export function markNameOf(look: Look | undefined): MarkName {
  return look ? markNames[markOf(look)] : 'unpruned'
}
