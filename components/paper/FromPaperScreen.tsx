'use client'

import './from-paper.css'

import { openShiftOf, useNow, useSelect } from '@/lib/hooks'
import { dayIn } from '@/lib/util/day-in'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'

import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { EntryForm } from './EntryForm'
import { EntryList } from './EntryList'
import { isIn, isToSend } from './entry'
import { useEntries } from './use-entries'

/** What was written on paper is entered for whoever did it, with its time. */
export function FromPaperScreen() {
  const { fromPaper: text } = useLeadWords()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const day = useSelect((view) => openShiftOf(view)?.date ?? null)
  const now = useNow(60_000)
  return (
    <LeadScreen here="shift">
      <div className="from-paper">
        <h1>{text.title}</h1>
        <p>{text.lead}</p>
        {now && <Lines today={day ?? dayIn(zone, now)} />}
      </div>
    </LeadScreen>
  )
}

function Lines({ today }: { today: string }) {
  const { fromPaper: text } = useLeadWords()
  const entries = useEntries(today)
  const { sheet, sending } = entries
  const toSend = sheet.entries.filter(isToSend).length
  const refused = sheet.entries.filter((entry) => !isToSend(entry) && !isIn(entry)).length
  if (!entries.ready) return null
  return (
    <>
      <TextField label={text.day} type="date" value={sheet.date} onChange={entries.setDate} />
      <EntryForm entries={entries} />
      <section className="stack" aria-label={text.lines(sheet.entries.length)}>
        <h2>{text.lines(sheet.entries.length)}</h2>
        <EntryList entries={entries} />
        {toSend > 0 && (
          <Button
            kind="call"
            state={sending === null ? 'ready' : 'waiting'}
            onPress={() => void entries.sendAll()}
          >
            {text.send(toSend)}
          </Button>
        )}
        {toSend === 0 && sheet.entries.length > 0 && (
          <p role="status">{refused > 0 ? text.refused(refused) : text.allSent}</p>
        )}
        {sheet.entries.some(isIn) && (
          <Button onPress={() => void entries.putAway(isIn)}>{text.clear}</Button>
        )}
      </section>
    </>
  )
}
