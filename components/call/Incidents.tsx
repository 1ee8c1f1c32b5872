'use client'

import { useState } from 'react'

import { type CallRead, type Incident, useIncidents } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { List, ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import { IncidentForm } from './IncidentForm'

type IncidentsProps = {
  /** The call that one is to be written of. */
  of: CallRead | null
  onDone: () => void
}

/** What went wrong, the newest first, and writing it down. */
export function Incidents({ of, onDone }: IncidentsProps) {
  const words = useWords()
  const { calls: text } = useLeadWords()
  const [isWriting, setWriting] = useState(false)
  const incidents = useIncidents()
  const close = () => {
    setWriting(false)
    if (of) onDone()
  }
  return (
    <>
      <div className="head">
        <h2>{text.incidents}</h2>
        <span className="small">{text.forLeadsOnly}</span>
      </div>
      <div className="stack incidents">
        <Button icon="edit" onPress={() => setWriting(true)}>
          {text.write}
        </Button>
        {incidents.state === 'reading' && <p role="status">{words.common.asking}</p>}
        {incidents.state === 'failed' && (
          <p role="status">{faultSentence(words, { fault: incidents.fault })}</p>
        )}
        {incidents.state === 'read' && incidents.value.length === 0 && <p>{text.noIncidents}</p>}
      </div>
      {incidents.state === 'read' && (
        <List label={text.incidents}>
          {incidents.value.map((one) => (
            <OneIncident key={one.incident} one={one} />
          ))}
        </List>
      )}
      {(isWriting || of) && <IncidentForm key={of?.call ?? 'new'} of={of} onClose={close} />}
    </>
  )
}

function OneIncident({ one }: { one: Incident }) {
  const { calls: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const at = new Date(one.happenedAt)
  return (
    <ListItem
      title={text.kinds[one.kind]}
      note={
        <>
          <span className="call-note">
            {one.tree !== null && <Tag>{tagOf(one.tree)}</Tag>}
            <span>{format.date(at)}</span>
            <span>{format.clock(at)}</span>
            <span>{text.by(nameOf(one.writtenBy))}</span>
          </span>
          {one.note !== null && <span className="call-note">{one.note}</span>}
        </>
      }
    />
  )
}
