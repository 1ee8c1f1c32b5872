'use client'

import { useSelect, useSend } from '@/lib/hooks'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords, useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'

/** Whoever came by a lead's or manager's link: the right person, or whoever opened it first in a chat. */
export function CameByLink() {
  const { invites: text } = useLeadWords()
  const waiting = useSelect(({ state }) =>
    Object.entries(state?.people ?? {})
      .filter(([, { admitted, role }]) => !admitted && (role === 'lead' || role === 'manager'))
      .map(([id]) => id)
  )
  if (waiting.length === 0) return null
  return (
    <Note tone="call" icon="people" lead={text.waits}>
      <p>{text.waitsNote}</p>
      {waiting.map((id) => (
        <Comer key={id} id={id} />
      ))}
    </Note>
  )
}

function Comer({ id }: { id: string }) {
  const { things } = useWords()
  const { people, invites: text } = useLeadWords()
  const name = useNameOf()(id)
  const role = useSelect(({ state }) => state?.people[id]?.role ?? 'lead')
  const send = useSend()
  const { asked, ask } = useAsk()
  return (
    <div className="room-row">
      <span className="grow">
        <b>{name}</b> <span className="small">{things.role[role]}</span>
      </span>
      <Button
        label={people.admitPerson(name)}
        onPress={() => ask(send('admit_person', { subject: id }))}
      >
        {people.admit}
      </Button>
      <Button onPress={() => ask(send('remove_person', { subject: id }))}>
        {text.notThem(name)}
      </Button>
      <AskedNote asked={asked} whose={name} />
    </div>
  )
}
