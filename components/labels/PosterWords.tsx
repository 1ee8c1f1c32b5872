'use client'

import type { Shift } from '@/lib/events/state'
import { useSelect } from '@/lib/hooks'
import { formatFor } from '@/lib/text/format'
import type { Language } from '@/lib/text/language'
import type { LeadMessages } from '@/lib/text/messages'

type PosterWordsProps = {
  language: Language
  words: LeadMessages['labels']
  shift: Shift | null
}

/** What the poster says, in one of its two languages. */
export function PosterWords({ language, words, shift }: PosterWordsProps) {
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const timeZone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const format = formatFor({ language, units, timeZone })
  const [from, to] = [shift?.startsAt, shift?.endsAt].map((at) => (at ? new Date(at) : null))
  return (
    <div lang={language}>
      <h2>{words.joinHere}</h2>
      {from && to && <p>{words.ends(format.date(from), format.clock(from), format.clock(to))}</p>}
      <p>
        {words.scan} {words.noPhone}
      </p>
    </div>
  )
}
