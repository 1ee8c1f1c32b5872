'use client'

import { useState } from 'react'

import type { Role } from '@/lib/events/state'
import { useDraft, usePrivatePeople, useSelect, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { AskedNote } from './AskedNote'
import { changesOf, type KnownPerson, personLacks } from './changed-person'
import { GuardianChoice } from './GuardianChoice'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type EditPersonProps = { id: string; name: string; onClose: () => void }

/** What is written down about somebody, set right: only what is changed is sent. */
export function EditPerson(props: EditPersonProps) {
  const { people: text } = useLeadWords()
  const { common } = useWords()
  const contacts = usePrivatePeople()
  const title = text.editTitle(props.name)
  if (contacts.state !== 'read')
    return (
      <Dialog open title={title} onClose={props.onClose} closeLabel={common.close}>
        <p role="status">{contacts.state === 'reading' ? common.asking : text.editNoSignal}</p>
      </Dialog>
    )
  return <Form {...props} title={title} phone={contacts.value[props.id]?.phone ?? ''} />
}

function Form({
  id,
  name,
  title,
  phone,
  onClose,
}: EditPersonProps & { title: string; phone: string }) {
  const { common, things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const { asked, ask } = useAsk()
  const role = useSelect((view) => view.state?.people[id]?.role ?? 'volunteer')
  const minor = useSelect((view) => view.state?.minors[id] ?? null)
  const me = useSelect((view) => view.state?.me)
  const known: KnownPerson = {
    name,
    role,
    ageBand: minor ? 'minor' : 'adult',
    guardian: minor?.guardianId ?? null,
    phone,
  }
  const draft = useDraft<KnownPerson>(`edit|${id}`, known)
  const [wasTried, setWasTried] = useState(false)
  const person = draft.value
  const lacks = wasTried ? personLacks(person) : []
  const change = (part: Partial<KnownPerson>) => draft.write({ ...person, ...part })
  const roles: readonly Role[] =
    me?.role === 'manager' ? ['volunteer', 'visitor', 'lead', 'manager'] : ['volunteer', 'visitor']

  const keep = () => {
    setWasTried(true)
    if (personLacks(person).length > 0) return
    void ask(send('change_person', { subject: id, ...changesOf(known, person) }), () => {
      void draft.drop()
      onClose()
    })
  }
  return (
    <Dialog open title={title} onClose={onClose} closeLabel={common.close}>
      <TextField
        label={text.name}
        value={person.name}
        maxLength={60}
        required
        onChange={(next) => change({ name: next })}
        fault={lacks.includes('name') && text.writeName}
      />
      {roles.includes(role) && (
        <Segmented
          label={text.whatTheyDo}
          options={roles.map((value) => ({ value, label: things.role[value] }))}
          value={person.role}
          onChange={(next) => change({ role: next })}
        />
      )}
      <Segmented
        label={text.ageBand}
        options={[
          { value: 'adult', label: text.adult },
          { value: 'minor', label: text.minor },
        ]}
        value={person.ageBand}
        onChange={(ageBand) => change({ ageBand })}
      />
      {lacks.includes('role') && <p role="alert">{text.minorNoLead}</p>}
      {person.ageBand === 'minor' && (
        <GuardianChoice
          value={person.guardian}
          not={id}
          onChange={(guardian) => change({ guardian })}
          fault={lacks.includes('guardian') ? text.chooseGuardian : undefined}
        />
      )}
      <TextField
        label={text.phone}
        hint={text.phoneHint}
        type="tel"
        inputMode="tel"
        maxLength={40}
        value={person.phone}
        onChange={(next) => change({ phone: next })}
      />
      <AskedNote asked={asked} whose={name} />
      <Button
        kind="call"
        wide
        state={asked.state === 'asking' ? 'waiting' : 'ready'}
        onPress={keep}
      >
        {text.keepChanges}
      </Button>
    </Dialog>
  )
}
