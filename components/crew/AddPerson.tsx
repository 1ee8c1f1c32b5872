'use client'

import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { AskedNote } from './AskedNote'
import { GuardianChoice } from './GuardianChoice'
import { emptyPerson, type NewPerson, personArgs, personLacks } from './new-person'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type AddPersonProps = {
  open: boolean
  onClose: () => void
}

/** Somebody without a phone, a child with an adult, a visitor: in the crew by a lead's hand. */
export function AddPerson({ open, onClose }: AddPersonProps) {
  const { common, things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const go = useGo()
  const draft = useDraft<NewPerson>('add-person', emptyPerson)
  const { wasTried, tried, startAgain } = useTries()
  const { asked, ask } = useAsk()
  const hasOrchard = useSelect((view) => view.state !== null)
  const person = draft.value
  const lacks = wasTried ? personLacks(person) : []
  const change = (part: Partial<NewPerson>) => draft.write({ ...person, ...part })

  const add = () => {
    tried()
    if (personLacks(person).length > 0 || !hasOrchard) return
    void ask(send('add_person', personArgs(person)), ({ id }) => {
      startAgain()
      void draft.writeNow(emptyPerson)
      onClose()
      go.push(routes.person(id))
    })
  }

  return (
    <Dialog open={open} title={text.addTitle} onClose={onClose} closeLabel={common.close}>
      <p className="small">{text.addNote}</p>
      <TextField
        label={text.name}
        value={person.name}
        maxLength={60}
        required
        onChange={(name) => change({ name })}
        fault={lacks.includes('name') && text.writeName}
      />
      <Segmented
        label={text.whatTheyDo}
        options={[
          { value: 'volunteer', label: things.role.volunteer },
          { value: 'visitor', label: things.role.visitor },
        ]}
        value={person.role}
        onChange={(role) => change({ role })}
      />
      <Segmented
        label={text.ageBand}
        options={[
          { value: 'adult', label: text.adult },
          { value: 'minor', label: text.minor },
        ]}
        value={person.ageBand}
        onChange={(ageBand) => change({ ageBand })}
      />
      {person.ageBand === 'minor' && (
        <GuardianChoice
          value={person.guardian}
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
        onChange={(phone) => change({ phone })}
      />
      <AskedNote asked={asked} />
      <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={add}>
        {text.addButton}
      </Button>
    </Dialog>
  )
}
