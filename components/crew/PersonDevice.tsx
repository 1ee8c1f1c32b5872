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

/** A code that makes a phone theirs: the first, or another one. */
export function PersonDevice({ id, name }: { id: string; name: string }) {
  const { people: text } = useLeadWords()
  const { makeInvite } = useRowcall()
  const [code, setCode] = useState<string | null>(null)
  const { asked, ask } = useAsk()
  const make = async () => {
    const made = await makeInvite({ kind: 'device', subject: id })
    await ask(Promise.resolve(made.sent), () => setCode(made.code))
  }
  return (
    <Panel title={text.device}>
      <div className="stack">
        <p className="small">{text.deviceNote(name)}</p>
        {code !== null && <LinkToShow path={routes.join(code)} title={text.device} />}
        <AskedNote asked={asked} whose={name} />
        <Button onPress={make}>{text.makeDevice}</Button>
      </div>
    </Panel>
  )
}
