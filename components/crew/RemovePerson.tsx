'use client'

import { useState } from 'react'

import { useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** Puts somebody out of the orchard, after saying what that does. */
export function RemovePerson({ id, name }: { id: string; name: string }) {
  const { common } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const go = useGo()
  const [isOpen, setIsOpen] = useState(false)
  const { asked, ask } = useAsk()
  return (
    <div>
      <Button onPress={() => setIsOpen(true)}>{text.remove}</Button>
      <Dialog
        open={isOpen}
        title={text.removeTitle(name)}
        onClose={() => setIsOpen(false)}
        closeLabel={common.close}
      >
        <ul className="plain-list">
          {text.removeNotes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
        <AskedNote asked={asked} whose={name} />
        <Button
          onPress={() =>
            ask(send('remove_person', { subject: id }), () => go.push(routes.people()))
          }
        >
          {text.removeButton(name)}
        </Button>
      </Dialog>
    </div>
  )
}
