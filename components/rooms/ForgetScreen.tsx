'use client'

import { useState } from 'react'

import { type BeforeForgetting, useBeforeForgetting } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { AskedNote } from '../crew/AskedNote'
import { useLeadWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { ForgetButton } from './ForgetButton'
import { ForgetWhom } from './ForgetWhom'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'

/** Forgets somebody for good, after showing who it is, what goes, what stays and what is in the way. */
export function ForgetScreen({ id }: { id: string }) {
  const { forget: text, left } = useLeadWords()
  const reading = useBeforeForgetting(id)
  // The name is gone from everywhere by then.
  const [isDone, setIsDone] = useState(false)
  const name = reading.state === 'read' ? reading.value.name : null
  const isStillIn = reading.state === 'read' && reading.value.removedAt === null
  return (
    <Room
      title={isDone ? text.done : name === null ? left.title : text.title(name)}
      back={
        isStillIn && !isDone
          ? { href: routes.person(id), word: text.toPerson }
          : { href: routes.left(), word: text.toLeft }
      }
    >
      {isDone ? (
        <Note tone="done" icon="check" role="status" lead={text.gone}>
          {text.doneNote}
        </Note>
      ) : (
        <ReadingOf reading={reading}>
          {(person) =>
            person.name === null ? (
              <p>{text.gone}</p>
            ) : (
              <Before person={person} name={person.name} onForgotten={() => setIsDone(true)} />
            )
          }
        </ReadingOf>
      )}
    </Room>
  )
}

type BeforeProps = { person: BeforeForgetting; name: string; onForgotten: () => void }

function Before({ person, name, onForgotten }: BeforeProps) {
  const { forget: text } = useLeadWords()
  const { onCard, inBriefings, incidents } = person
  const isElsewhere = onCard || inBriefings > 0 || incidents > 0
  return (
    <>
      <ForgetWhom person={person} name={name} />
      <div className="room-groups">
        <Panel title={text.goes}>
          <ul className="plain-list">
            {text.goesList.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Panel>
        <Panel title={text.stays}>
          <ul className="plain-list">
            {text.staysList.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Panel>
      </div>
      <Panel title={text.elsewhere}>
        <ul className="plain-list">
          {text.elsewhereList.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Panel>
      {isElsewhere && (
        <Panel title={text.look}>
          <ul className="plain-list">
            {onCard && (
              <li>
                <a href={routes.emergency()}>{text.onCard}</a>
              </li>
            )}
            {incidents > 0 && (
              <li>
                <a href={routes.calls()}>{text.incidents(incidents)}</a>
              </li>
            )}
            {inBriefings > 0 && <li>{text.inBriefings(inBriefings)}</li>}
          </ul>
        </Panel>
      )}
      {person.inTheWay.length > 0 ? (
        <Panel title={text.inTheWay}>
          <AskedNote asked={{ state: 'refused', refused: person.inTheWay }} whose={name} />
        </Panel>
      ) : (
        <ForgetButton id={person.person} name={name} onForgotten={onForgotten} />
      )}
      <p>
        <ButtonLink href={person.removedAt === null ? routes.person(person.person) : routes.left()}>
          {person.removedAt === null ? text.toPerson : text.toLeft}
        </ButtonLink>
      </p>
    </>
  )
}
