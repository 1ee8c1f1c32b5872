'use client'

import { type ReactNode, useState } from 'react'

import { type Sent, useSelect, useSend, type View } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useStartWords } from '../layout/Words'
import { WhyNot } from '../sync/WhyNot'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { offWhen } from '../ui/button-look'
import { CheckRow } from '../ui/CheckRow'
import { Note } from '../ui/Note'
import { Why } from '../ui/Why'
import { consentTextVersion } from './consent-text'
import { useReadySteps } from './use-ready'

/** The text, read once a season; a minor reads it with the adult who agrees. */
export function ConsentScreen() {
  const { consent } = useStartWords()
  const step = useReadySteps().find(({ name }) => name === 'consent')
  const guardian = useSelect(guardianOf)
  const isMinor = guardian !== 'adult'

  if (step?.state === 'done') return <Agreed />
  return (
    <Asked
      by={typeof guardian === 'string' ? null : guardian}
      // A child's phone alone proves nothing.
      mayAgree={!isMinor || typeof guardian === 'object'}
    >
      {isMinor && (
        <Note icon="people" lead={consent.minorTitle}>
          {consent.minorWhy}
          {typeof guardian === 'string' && ` ${consent.withLead} ${consent.onThisDevice}`}
        </Note>
      )}
    </Asked>
  )
}

type AskedProps = {
  by: { id: string; name: string } | null
  mayAgree: boolean
  children: ReactNode
}

function Asked({ by, mayAgree, children }: AskedProps) {
  const { consent } = useStartWords()
  const go = useGo()
  const send = useSend()
  const [hasRead, setHasRead] = useState(false)
  const [sent, setSent] = useState<Sent | null>(null)

  async function agree() {
    const answer = await send('give_consent', {
      by: by?.id ?? null,
      textVersion: consentTextVersion,
    })
    setSent(answer)
    if (answer.state === 'kept') go.push(routes.ready())
  }

  return (
    <CrewScreen
      why={
        <>
          <WhyNot sent={sent} />
          {mayAgree && !hasRead && <Why id="read-first">{consent.readFirst}</Why>}
        </>
      }
      step={
        mayAgree && (
          <Button kind="call" {...offWhen(!hasRead, 'read-first')} onPress={() => void agree()}>
            {consent.agree}
          </Button>
        )
      }
    >
      <h1>{consent.title}</h1>
      {children}
      <Text />
      {mayAgree && (
        <CheckRow checked={hasRead} onChange={setHasRead} next>
          {by === null ? consent.iAgree : consent.guardianAgrees(by.name)}
        </CheckRow>
      )}
    </CrewScreen>
  )
}

function Agreed() {
  const { consent, ready } = useStartWords()
  return (
    <CrewScreen
      step={
        <ButtonLink kind="call" href={routes.ready()}>
          {consent.goOn}
        </ButtonLink>
      }
    >
      <h1>{ready.consentDone}</h1>
      <Note icon="info">{consent.agreedNote}</Note>
      <Text />
    </CrewScreen>
  )
}

function Text() {
  const { consent } = useStartWords()
  return (
    <>
      {consent.parts.map(({ title, says }) => (
        <section key={title}>
          <h2>{title}</h2>
          <p>{says}</p>
        </section>
      ))}
      <p className="small">{consent.version(consentTextVersion)}</p>
    </>
  )
}

/** 'elsewhere': a minor whose guardian does not use this device, or whom no lead has put down yet. */
function guardianOf({ state, me, memberships }: View) {
  const minor = me && state?.minors[me.personId]
  if (!minor) return 'adult'
  const here = memberships.find(({ personId }) => personId === minor.guardianId)
  return here ? { id: here.personId, name: here.personName } : 'elsewhere'
}
