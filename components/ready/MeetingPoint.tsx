'use client'

import { openShiftOf, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useStartWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { nextShift } from './use-ready'

/** Where the crew meets, and when, while the shift is still to come. */
export function MeetingPoint() {
  const { ready } = useStartWords()
  const format = useFormat()
  const place = useSelect((view) => view.emergency?.meeting_point)
  const startsAt = useSelect((view) =>
    openShiftOf(view) ? null : (nextShift(view)?.startsAt ?? null)
  )
  if (!place) return null
  return (
    <Note icon="meet" lead={ready.meet(startsAt && format.clock(new Date(startsAt)))}>
      {place}
    </Note>
  )
}
