'use client'

import type { DayAhead } from '@/lib/domain/planning/day-ahead'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { Facts } from '../ui/Facts'
import type { DayToCome } from './use-day-ahead'

type WhatItRestsOnProps = {
  day: Extract<DayToCome, { state: 'told' }>
  ahead: Extract<DayAhead, { state: 'known' }>
}

/** The figures behind the sentence, and what was left out of them. */
export function WhatItRestsOn({ day, ahead }: WhatItRestsOnProps) {
  const { dayAhead: text } = useLeadWords()
  const format = useFormat()
  const ends = day.isLight ? text.endsByLight : text.endsByShift
  const aside = (['closed', 'off', 'beyond'] as const).filter((why) => day.aside[why] > 0)
  return (
    <Facts
      facts={[
        { icon: 'check', text: text.trees(ahead.trees) },
        { icon: 'people', text: text.people(day.people) },
        { icon: 'clock', text: ends(format.clock(new Date(day.endsMs))) },
        { icon: 'eye', text: text.share(format.share(ahead.share)) },
        ...aside.map((why) => ({ icon: 'lock' as const, text: text[why](day.aside[why]) })),
        { icon: 'info', text: text.strays },
        { icon: 'info', text: text.usual },
      ]}
    />
  )
}
