'use client'

import { useState } from 'react'

import { useRowcall } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { AskedNote } from './AskedNote'
import { LinkToShow } from './LinkToShow'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** A manager's way back in when every device is lost. The code is shown once and kept nowhere here. */
export function RecoveryCode({ id, name }: { id: string; name: string }) {
  const { people: text } = useLeadWords()
  const { makeInvite } = useRowcall()
  const [code, setCode] = useState<string | null>(null)
  const { asked, ask } = useAsk()
  const make = async () => {
    const made = await makeInvite({ kind: 'recovery', subject: id })
    await ask(Promise.resolve(made.sent), () => setCode(made.code))
  }
  return (
    <Panel title={text.recovery}>
      <div className="stack">
        <p className="small">{text.recoveryNote}</p>
        {code !== null && (
          <>
            <Note tone="call" icon="warn">
              {text.recoveryOnce}
            </Note>
            <LinkToShow path={routes.join(code)} title={text.recovery} />
          </>
        )}
        <AskedNote asked={asked} whose={name} />
        <Button onPress={make}>{text.makeRecovery}</Button>
      </div>
    </Panel>
  )
}
