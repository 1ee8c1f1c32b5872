'use client'

import { type PrivatePeople, useNow } from '@/lib/hooks'
import { minutesSince } from '../crew/crew-order'
import { useHeardWords } from '../crew/use-heard-words'
import { useLeadWords } from '../crew/use-lead-words'
import { useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { Tag } from '../ui/Tag'
import type { Person } from './counted'

type MissingRowProps = {
  person: Person
  /** Undefined: not read yet, or without signal. */
  contact: PrivatePeople[string] | undefined
  /** The first one to ring. */
  isNext: boolean
  onSeen: () => void
}

/** Somebody who is not counted: where they were, whether their phone was heard, and what to do. */
export function MissingRow({ person, contact, isNext, onSeen }: MissingRowProps) {
  const { count: text } = useLeadWords()
  const tagOf = useTagOf()
  const rowTag = useRowTag()
  const heard = useHeardOf(contact)
  const { name, tree, row, isAtTree, onBreak } = person
  const phone = contact?.phone ?? null
  return (
    <li className={isAtTree ? 'missing is-at-tree' : 'missing'}>
      <Face name={name} kind="ink" />
      <span className="missing-says">
        <b className="missing-name">{name}</b>
        <span className="small">
          {tree !== null && (
            <>
              {!isAtTree && `${text.lastAt} `}
              <Tag>{tagOf(tree)}</Tag>{' '}
            </>
          )}
          {row !== null && (
            <>
              <Tag>{rowTag(row)}</Tag>{' '}
            </>
          )}
          {[tree === null && row === null && contact && text.noTree, onBreak && text.onBreak, heard]
            .filter(Boolean)
            .join(', ')}
        </span>
      </span>
      <span className="missing-ways">
        {phone !== null && (
          <a
            className={isNext ? 'btn is-call' : 'btn'}
            href={`tel:${phone.replaceAll(/[^+\d]/g, '')}`}
            aria-label={text.callPerson(name)}
          >
            <Icon name="call" />
            {text.call}
          </a>
        )}
        <Button label={text.seenPerson(name)} onPress={onSeen}>
          {text.seen}
        </Button>
      </span>
    </li>
  )
}

function useHeardOf(contact: PrivatePeople[string] | undefined): string | null {
  const words = useHeardWords()
  const now = useNow(30_000)
  if (contact === undefined || now === null) return null
  return words(contact.heardAt === null ? 'no_phone' : minutesSince(contact.heardAt, now))
}
