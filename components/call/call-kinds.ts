/** The four kinds of a call, the gravest first, and how each is drawn. */

import type { CallKind } from '@/lib/events/state'
import type { IconName } from '../ui/Icon'

export const callKinds: readonly CallKind[] = ['injury', 'lost_person', 'question', 'tool']

export const callIcons: Record<CallKind, IconName> = {
  injury: 'aid',
  lost_person: 'person',
  question: 'call',
  tool: 'pruner',
}

/** As the address says it. */
export function callKindOf(told: string | null): CallKind | null {
  return callKinds.find((kind) => kind === told) ?? null
}
