/** An incident while it is written. */

import type { Incident } from '@/lib/hooks'

export type IncidentDraft = {
  kind: Incident['kind'] | null
  /** "10:42", on the orchard's clock. */
  time: string
  tree: number | null
  note: string
}

type OfCall = { kind: string; tree: number | null }

/** Of a call what kind it was and where; never its words. */
export function draftOf(of: OfCall | null, time: string): IncidentDraft {
  const kind = of?.kind === 'injury' || of?.kind === 'lost_person' ? of.kind : null
  return { kind, time, tree: of?.tree ?? null, note: '' }
}
