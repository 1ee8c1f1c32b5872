'use client'

import { useState } from 'react'

import { useNow, usePrivatePeople, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { minutesSince } from './crew-order'
import { EditPerson } from './EditPerson'
import { useHeardWords } from './use-heard-words'
import { useLeadWords } from './use-lead-words'

/** Who it is, whether their phone was heard, and how to call them. */
export function PersonHead({ id, name }: { id: string; name: string }) {
  const { things } = useWords()
  const { people: text } = useLeadWords()
  const nameOf = useNameOf()
  const [isEditing, setIsEditing] = useState(false)
  const role = useSelect((view) => view.state?.people[id]?.role ?? 'volunteer')
  const minor = useSelect((view) => view.state?.minors[id] ?? null)
  const heard = useHeardOf(id)
  const contacts = usePrivatePeople()
  const phone = contacts.state === 'read' ? (contacts.value[id]?.phone ?? null) : null
  const underAge =
    minor && (minor.guardianId === null ? text.minorAlone : text.minorOf(nameOf(minor.guardianId)))

  return (
    <header className="person-head">
      <Face name={name} />
      <div className="grow">
        <h1>{name}</h1>
        <p className="muted">{[things.role[role], underAge, heard].filter(Boolean).join(' · ')}</p>
      </div>
      <Button icon="edit" label={text.edit(name)} onPress={() => setIsEditing(true)}>
        {text.editShort}
      </Button>
      {isEditing && <EditPerson id={id} name={name} onClose={() => setIsEditing(false)} />}
      {phone !== null && (
        <a className="btn" href={`tel:${phone.replaceAll(/[^+\d]/g, '')}`}>
          <Icon name="call" />
          {text.call(phone)}
        </a>
      )}
    </header>
  )
}

function useHeardOf(id: string): string | null {
  const words = useHeardWords()
  const contacts = usePrivatePeople()
  const now = useNow(60_000)
  if (contacts.state !== 'read' || !now) return null
  const heardAt = contacts.value[id]?.heardAt ?? null
  return words(heardAt === null ? 'no_phone' : minutesSince(heardAt, now))
}
