'use client'

import { type BeforeForgetting, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useLeadWords, useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { useDays } from './use-days'

type ForgetWhomProps = { person: BeforeForgetting; name: string }

/** Days, hours and trees of somebody, by which two people of one name are told apart. */
export function ForgetWhom({ person, name }: ForgetWhomProps) {
  const { things } = useWords()
  const { forget: text } = useLeadWords()
  const format = useFormat()
  const { day, dayOf } = useDays()
  const sameName = useSelect(
    ({ names, state }) =>
      Object.entries(names).filter(
        ([id, other]) =>
          id !== person.person && state?.people[id] && other.toLowerCase() === name.toLowerCase()
      ).length
  )
  return (
    <Panel title={text.who}>
      <div className="stack">
        <ul className="plain-list">
          <li>{text.role(things.role[person.role], dayOf(person.addedAt))}</li>
          <li>{person.removedAt === null ? text.stillIn : text.left(dayOf(person.removedAt))}</li>
          <li>
            {person.shifts === 0
              ? text.never
              : text.worked(person.shifts, format.duration(person.workedS / 60))}
          </li>
          {person.lastShift !== null && <li>{text.lastHere(day(person.lastShift))}</li>}
          {person.trees > 0 && <li>{text.trees(person.trees)}</li>}
        </ul>
        {sameName > 0 && (
          <Note tone="call" icon="warn">
            {text.sameName(sameName)}
          </Note>
        )}
      </div>
    </Panel>
  )
}
