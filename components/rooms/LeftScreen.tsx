'use client'

import { usePeopleWhoLeft } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useLeadWords, useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Panel } from '../ui/Panel'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'
import { useDays } from './use-days'

/** Who was removed and is not forgotten: the only place where they are still found by name. */
export function LeftScreen() {
  const { things } = useWords()
  const { left: text } = useLeadWords()
  const { dayOf } = useDays()
  const reading = usePeopleWhoLeft()
  return (
    <Room title={text.title} lead={text.lead}>
      <ReadingOf reading={reading}>
        {(people) =>
          people.length === 0 ? (
            <p>{text.nobody}</p>
          ) : (
            <Panel>
              <ul className="list">
                {people.map(({ person, name, role, addedAt, removedAt }) => (
                  <li key={person} className="room-row">
                    <span className="grow">
                      <b>{name}</b>
                      <span className="small">
                        {things.role[role]}, {text.since(dayOf(addedAt), dayOf(removedAt))}
                      </span>
                    </span>
                    <ButtonLink href={routes.forget(person)} label={text.forgetOf(name)}>
                      {text.forget}
                    </ButtonLink>
                  </li>
                ))}
              </ul>
            </Panel>
          )
        }
      </ReadingOf>
    </Room>
  )
}
