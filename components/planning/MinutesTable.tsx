'use client'

import type { DayAhead } from '@/lib/domain/planning/day-ahead'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { ColumnHeads } from '../ui/ColumnHeads'

type Kinds = Extract<DayAhead, { state: 'known' }>['kinds']

/** What each kind of tree takes of which some are finished, and how sure that is. */
export function MinutesTable({ kinds }: { kinds: Kinds }) {
  const words = useWords()
  const { dayAhead: text, ground } = useLeadWords()
  return (
    <table className="minutes-table">
      <caption>{text.table}</caption>
      <ColumnHeads heads={[text.kind, text.minutes, text.finished]} />
      <tbody>
        {kinds.map(
          ({ species, size, minutes }) =>
            minutes.state === 'known' &&
            minutes.trees > 0 && (
              <tr key={`${species}${size}`}>
                <th scope="row">
                  {[
                    capitalised(speciesWords(words, species).many),
                    ...(size === null ? [] : [ground.sizes[size]]),
                  ].join(', ')}
                </th>
                <td className="num">
                  {text.minutesWords(
                    Math.round(minutes.minutes),
                    Math.round(minutes.from),
                    Math.round(minutes.to)
                  )}
                </td>
                <td className="num">{minutes.trees}</td>
              </tr>
            )
        )}
      </tbody>
    </table>
  )
}
