'use client'

import { useSelect } from '@/lib/hooks'
import { peopleInOrder } from '../crew/readiness'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf } from '../sync/use-refusal-words'
import { BlankRows, PaperTable } from './Page'

/** Who comes and goes signs here. Nothing on it is for the lead alone, so that it may lie on the table. */
export function PeoplePart() {
  const { paper: text } = useLeadWords()
  const nameOf = useNameOf()
  const ids = useSelect((view) => peopleInOrder(view).map(({ id }) => id))
  const inOrder = ids.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b)))
  const columns = [
    { name: 'name', head: text.name },
    { name: 'clock', head: text.arrived },
    { name: 'breaks', head: text.breaks },
    { name: 'clock-2', head: text.left },
    { name: 'sign', head: text.signature },
  ]
  return (
    <section className="paper-sheet" aria-label={text.signIn}>
      <PaperTable title={text.signIn} columns={columns}>
        <tbody>
          {inOrder.map((id) => (
            <tr key={id}>
              <th scope="row">{nameOf(id)}</th>
              <td />
              <td />
              <td />
              <td />
            </tr>
          ))}
          <BlankRows count={8} columns={columns.length} />
        </tbody>
      </PaperTable>
    </section>
  )
}
