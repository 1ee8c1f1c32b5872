'use client'

import { type BriefingChanges, briefingChanges } from '@/lib/domain/safety/briefing-changes'
import { type Briefing, useBriefing, useOldBriefing } from '@/lib/hooks'

export type WhatIsNew =
  | { state: 'reading' }
  | { state: 'failed' }
  /** `changes` null: all of it is new to them, or what they signed cannot be read here. */
  | { state: 'read'; briefing: Briefing | null; changes: BriefingChanges | null }

/** The briefing of now, and what is new in it for somebody who signed this version; 0: none yet. */
export function useWhatIsNew(shiftId: string | null, signedVersion: number): WhatIsNew {
  const now = useBriefing(shiftId)
  const newest = now.state === 'read' ? (now.value?.version ?? 0) : 0
  const isAgain = signedVersion > 0 && signedVersion < newest
  const before = useOldBriefing(shiftId, isAgain ? signedVersion : null)
  if (now.state === 'reading') return { state: 'reading' }
  if (now.state === 'failed') return { state: 'failed' }
  if (!now.value || !isAgain) return { state: 'read', briefing: now.value, changes: null }
  if (before.state === 'reading') return { state: 'reading' }
  const old = before.state === 'read' ? before.value : null
  const changes = old && briefingChanges(old.topics, now.value.topics)
  return { state: 'read', briefing: now.value, changes }
}
