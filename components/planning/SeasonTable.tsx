'use client'

import type { Season } from '@/lib/domain/planning/season'
import { capitalised, speciesWords } from '@/lib/text/species'
import { useFormat } from '../layout/use-format'
import { useLeadWords, useWords } from '../layout/Words'
import { ColumnHeads } from '../ui/ColumnHeads'

/** Species with the most work first. */
export function SeasonTable({ species }: { species: Season['species'] }) {
  const words = useWords()
  const { season: text } = useLeadWords()
  const format = useFormat()
  const inOrder = species.toSorted((a, b) => b.hours.to - a.hours.to)
  return (
    <table className="minutes-table season-table">
      <ColumnHeads heads={[text.species, text.left, text.hoursHead, text.months, text.days]} />
      <tbody>
        {inOrder.map((one) => (
          <tr key={one.species}>
            <th scope="row">{capitalised(speciesWords(words, one.species).many)}</th>
            <td className="num">{one.trees}</td>
            <td className="num">
              {text.hoursWords(Math.round(one.hours.from), Math.round(one.hours.to))}
            </td>
            <td>
              {text.monthsWords(
                format.month(one.months[0] ?? 1),
                format.month(one.months.at(-1) ?? 1)
              )}
            </td>
            <td className="num">{format.number(one.days, 1)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  )
}
