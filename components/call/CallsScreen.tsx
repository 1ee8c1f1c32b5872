'use client'

import { useState } from 'react'

import { type CallRead, useCalls, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { SoundPanel } from '../alarm/SoundPanel'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { useGo } from '../layout/use-go'
import { List } from '../ui/List'
import { CallItem } from './CallItem'
import { openFirst, withWords } from './calls-in-order'
import { EndCall } from './EndCall'
import { Incidents } from './Incidents'
import './call-band.css'

type CallsScreenProps = {
  /** The call that an incident is to be written of. */
  incidentOf: string | null
}

/** All calls of the shift, who answered and after how long; beside them what went wrong. */
export function CallsScreen({ incidentOf }: CallsScreenProps) {
  const { calls: text } = useLeadWords()
  const go = useGo()
  const read = useCalls()
  const known = useSelect((view) => view.state?.calls ?? {})
  const [ending, setEnding] = useState<CallRead | null>(null)
  const written = read.state === 'read' ? read.value : []
  const { open, ended } = openFirst(withWords(known, written))
  const of = written.find(({ call }) => call === incidentOf) ?? null

  return (
    <LeadScreen
      here="calls"
      sideLabel={text.incidents}
      side={<Incidents of={of} onDone={() => go.replace(routes.calls())} />}
    >
      <div className="stack calls">
        <h1>{text.title}</h1>
        <section className="stack">
          <h2>{text.open}</h2>
          {open.length === 0 && <p>{text.noneOpen}</p>}
          <List>
            {open.map((call) => (
              <CallItem key={call.call} call={call} onEnd={() => setEnding(call)} />
            ))}
          </List>
          {open.some(({ kind }) => kind === 'lost_person') && <p>{text.searchFirst}</p>}
        </section>
        <section className="stack">
          <h2>{text.ended}</h2>
          {read.state === 'failed' && <p role="status">{text.noSignal}</p>}
          {read.state === 'read' && ended.length === 0 && <p>{text.noneEnded}</p>}
          <List>
            {ended.map((call) => (
              <CallItem key={call.call} call={call} />
            ))}
          </List>
        </section>
        <SoundPanel />
      </div>
      {ending && (
        <EndCall
          key={ending.call}
          call={{ ...ending, id: ending.call }}
          onClose={() => setEnding(null)}
        />
      )}
    </LeadScreen>
  )
}
