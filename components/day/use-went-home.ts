'use client'

import { openShiftOf, useDraft, useNow, useSelect } from '@/lib/hooks'

/** When I went home from this shift. The referee only knows who is here, so this device remembers it. */
export function useWentHome() {
  const shift = useSelect((view) => openShiftOf(view)?.id ?? null)
  const now = useNow()
  const draft = useDraft<{ shift: string | null; at: string } | null>('went-home', null)
  return {
    ready: draft.ready,
    at: draft.value !== null && draft.value.shift === shift ? new Date(draft.value.at) : null,
    remember: () => draft.writeNow({ shift, at: (now ?? new Date()).toISOString() }),
  }
}
