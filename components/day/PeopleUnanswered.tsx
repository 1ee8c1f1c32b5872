'use client'

import { useState } from 'react'

import { type Sent, useSend } from '@/lib/hooks'
import { useStartWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { List, ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import type { Unanswered } from './unanswered'

type PeopleUnansweredProps = { stop: string; people: readonly Unanswered[] }

/** The head count of a stop: a lead answers for whom they see, also for who has no phone. */
export function PeopleUnanswered({ stop, people }: PeopleUnansweredProps) {
  const { stop: text } = useStartWords()
  const tagOf = useTagOf()
  const rowTag = useRowTag()
  const send = useSend()
  const [sent, setSent] = useState<Sent | null>(null)
  const see = async (personId: string) =>
    setSent(await send('answer_stop', { stop, answer: 'stopped' }, { personId }))
  return (
    <>
      <p>{text.seenNote}</p>
      <WhyNot sent={sent} />
      <List label={text.silent}>
        {people.map(({ id, name, tree, row }) => (
          <ListItem
            key={id}
            lead={<Face name={name} />}
            title={name}
            note={
              tree !== null ? <Tag>{tagOf(tree)}</Tag> : row ? <Tag>{rowTag(row)}</Tag> : undefined
            }
            end={
              <Button label={text.seenPerson(name)} onPress={() => see(id)}>
                {text.seen}
              </Button>
            }
          />
        ))}
      </List>
    </>
  )
}
