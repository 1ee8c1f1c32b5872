'use client'

import { type AuditTrail, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import { groupBy } from '@/lib/util/group-by'
import { useFormat } from '../layout/use-format'
import { useLeadWords } from '../layout/Words'
import { useAuditSentence } from './use-audit-sentence'
import { useDays } from './use-days'

/** A page of events by day, each with its hour and number. */
export function AuditPage({ read }: { read: AuditTrail }) {
  const { audit: text } = useLeadWords()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const format = useFormat()
  const { day, clockOf } = useDays()
  const sentenceOf = useAuditSentence(read)
  if (read.events.length === 0) return <p>{text.none}</p>
  const byDay = groupBy(read.events, ({ at }) => dayIn(zone, new Date(at)))
  return [...byDay].map(([date, events]) => (
    <section key={date} className="audit-day" aria-label={day(date)}>
      <h2>{day(date)}</h2>
      <ol className="audit-lines">
        {events.map((event) => {
          const { sentence, tapped } = sentenceOf(event)
          return (
            <li key={event.n} className="audit-line">
              <span className="num">{clockOf(event.at)}</span>
              <span>{sentence}.</span>
              {tapped !== null && <span className="small">{tapped}</span>}
              <span className="tiny num">{text.number(format.number(event.n))}</span>
            </li>
          )
        })}
      </ol>
    </section>
  ))
}
