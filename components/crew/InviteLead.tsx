'use client'

import { useState } from 'react'

import { useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Button } from '../ui/Button'
import { Panel } from '../ui/Panel'
import { AskedNote } from './AskedNote'
import { LinkToShow } from './LinkToShow'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

const hoursOfALeadLink = 24

/** A link that makes one person a lead; only managers make it. */
export function InviteLead() {
  const { people: text } = useLeadWords()
  const { makeInvite } = useRowcall()
  const [code, setCode] = useState<string | null>(null)
  const { asked, ask } = useAsk()
  const make = async () => {
    const made = await makeInvite({ kind: 'role', role: 'lead', hours: hoursOfALeadLink })
    await ask(Promise.resolve(made.sent), () => setCode(made.code))
  }
  return (
    <Panel title={text.invite}>
      <div className="stack">
        <p className="small">{text.inviteNote}</p>
        {code !== null && <LinkToShow path={routes.join(code)} title={text.invite} />}
        <AskedNote asked={asked} />
        <Button onPress={make}>{text.inviteButton}</Button>
      </div>
    </Panel>
  )
}
