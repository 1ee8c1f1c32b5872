'use client'

import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { useRowTag } from '../sync/use-row-tag'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { Tag } from '../ui/Tag'
import { AskedNote } from './AskedNote'
import { claimWith } from './claims'
import { lackWords } from './lack-words'
import type { PersonLine } from './readiness'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** One person: what they lack, their tree; one press counts them in or lets them in. */
export function PersonRow({ line: { id, group, lacks } }: { line: PersonLine }) {
  const { things } = useWords()
  const { people: text } = useLeadWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const rowTag = useRowTag()
  const name = useNameOf()(id)
  const role = useSelect((view) => view.state?.people[id]?.role ?? 'volunteer')
  const tree = useSelect((view) => claimWith(view, id)?.tree ?? null)
  const row = useSelect((view) => claimWith(view, id)?.row ?? null)
  const canArrive = useSelect((view) =>
    Object.values(view.state?.shifts ?? {}).some((shift) => shift.state === 'open')
  )
  const lacking =
    group === 'notReady' || group === 'late'
      ? text.missing(format.list(lackWords(text, lacks)))
      : null
  const { asked, ask } = useAsk()
  const send = useSend()

  return (
    <li>
      <div className="person-row">
        <a className="item" href={routes.person(id)}>
          <Face name={name} kind={lacking ? 'ink' : 'plain'} />
          <span className="grow">
            <b>{name}</b>
            <span className="small">
              {[role === 'volunteer' ? null : things.role[role], lacking]
                .filter(Boolean)
                .join('. ')}
            </span>
          </span>
          {tree !== null && <Tag>{tagOf(tree)}</Tag>}
          {row && <Tag>{rowTag(row)}</Tag>}
        </a>
        {group === 'waiting' && (
          <Button
            label={text.admitPerson(name)}
            onPress={() => ask(send('admit_person', { subject: id }))}
          >
            {text.admit}
          </Button>
        )}
        {group === 'notHere' && canArrive && (
          <Button
            label={text.herePerson(name)}
            onPress={() => ask(send('arrive', {}, { personId: id }))}
          >
            {text.here}
          </Button>
        )}
      </div>
      <AskedNote asked={asked} whose={name} />
    </li>
  )
}
