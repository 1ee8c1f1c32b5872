'use client'

import { useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { consentTextVersion } from '../ready/consent-text'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { AskedNote } from './AskedNote'
import { GuardianChoice } from './GuardianChoice'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type ReadConsentProps = {
  open: boolean
  id: string
  name: string
  onClose: () => void
}

/** The consent read aloud; a minor's guardian agrees, before the lead's eyes. */
export function ReadConsent({ open, id, name, onClose }: ReadConsentProps) {
  const { common, consent } = useWords()
  const { people: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const { asked, ask } = useAsk()
  const minor = useSelect((view) => view.state?.minors[id] ?? null)
  const [chosen, setChosen] = useState<string | null>(null)
  const guardian = minor?.guardianId ?? null
  const lacksGuardian = minor !== null && guardian === null

  const agree = () =>
    ask(
      send('give_consent', { by: guardian, textVersion: consentTextVersion }, { personId: id }),
      onClose
    )
  return (
    <Dialog open={open} title={text.consentTitle(name)} onClose={onClose} closeLabel={common.close}>
      {consent.parts.map(({ title, says }) => (
        <p key={title}>
          <b>{title}</b> {says}
        </p>
      ))}
      <p className="small">{consent.version(consentTextVersion)}</p>
      {lacksGuardian && <GuardianChoice value={chosen} onChange={setChosen} />}
      <AskedNote asked={asked} whose={name} />
      {lacksGuardian ? (
        chosen !== null && (
          <Button
            kind="call"
            onPress={() => ask(send('change_person', { subject: id, guardian: chosen }))}
          >
            {text.setGuardian}
          </Button>
        )
      ) : (
        <Button kind="call" onPress={agree}>
          {guardian === null ? text.consentAgrees(name) : text.consentBy(nameOf(guardian))}
        </Button>
      )}
    </Dialog>
  )
}
