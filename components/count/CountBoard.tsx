'use client'

import type { ReactNode } from 'react'

import type { PrivatePeople } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf } from '../sync/use-refusal-words'
import { Icon } from '../ui/Icon'
import type { HeadCount } from './counted'
import { MissingRow } from './MissingRow'
import { WhereTheyWere } from './WhereTheyWere'
import './count.css'

type CountBoardProps = {
  count: HeadCount
  contacts: PrivatePeople
  onSeen: (personId: string) => void
  /** Where a tick can be taken back; an answer to a stop cannot. */
  onNotSeen?: (personId: string) => void
  /** What comes when everybody is counted. */
  foot: ReactNode
}

/** The number, then who is missing, then where they were, then who is counted. */
export function CountBoard({ count, contacts, onSeen, onNotSeen, foot }: CountBoardProps) {
  const { count: text } = useLeadWords()
  const { missing, found } = count
  const firstWithPhone = missing.find(({ id }) => contacts[id]?.phone != null)?.id
  const all = missing.length + found.length
  return (
    <div className="count-board">
      <div className="stack">
        <div className="count-number" role="status">
          <b className="num count-big">{found.length}</b>
          <span className="count-says">
            <b className="count-title">{text.ofAll(all)}</b>
            <span className="small">{text.seeNote}</span>
          </span>
          <span className="count-dots" aria-hidden="true">
            {[...found, ...missing].map(({ id }, at) => (
              <i key={id} className={at < found.length ? 'is-found' : ''} />
            ))}
          </span>
        </div>
        {missing.length > 0 && (
          <section aria-label={text.missing}>
            <h2 className="sr">{text.missing}</h2>
            <ul className="missing-list">
              {missing.map((person) => (
                <MissingRow
                  key={person.id}
                  person={person}
                  contact={contacts[person.id]}
                  isNext={person.id === firstWithPhone}
                  onSeen={() => onSeen(person.id)}
                />
              ))}
            </ul>
          </section>
        )}
        <WhereTheyWere people={missing} />
      </div>
      <div className="stack">
        <section className="stack" aria-label={text.found}>
          <div className="count-found-head">
            <h2>{text.found}</h2>
            {onNotSeen && found.length > 0 && <span className="small">{text.undoNote}</span>}
          </div>
          <Found found={found} onNotSeen={onNotSeen} />
        </section>
        <div className="count-foot">{foot}</div>
      </div>
    </div>
  )
}

type FoundProps = { found: HeadCount['found']; onNotSeen: CountBoardProps['onNotSeen'] | undefined }

function Found({ found, onNotSeen }: FoundProps) {
  const { count: text } = useLeadWords()
  const nameOf = useNameOf()
  return (
    <ul className="found-list">
      {found.map(({ id, name, seenBy }) => (
        <li key={id}>
          {onNotSeen ? (
            <button
              type="button"
              className="found-one"
              aria-label={text.notSeen(name)}
              onClick={() => onNotSeen(id)}
            >
              <Icon name="check" />
              <b>{name}</b>
            </button>
          ) : (
            <div className="found-one">
              <Icon name="check" />
              <span className="found-says">
                <b>{name}</b>
                <span className="small">
                  {seenBy === null ? text.byPhone : text.seenBy(nameOf(seenBy))}
                </span>
              </span>
            </div>
          )}
        </li>
      ))}
    </ul>
  )
}
