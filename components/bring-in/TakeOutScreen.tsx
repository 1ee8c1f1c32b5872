'use client'

import './bring-in.css'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Room } from '../rooms/Room'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { useTakeOut } from './use-take-out'

/** An orchard's data as files: its trees, its records, and the whole of it. */
export function TakeOutScreen() {
  const { takeOut: text } = useLeadWords()
  return (
    <Room title={text.title} lead={text.lead} reads>
      <div className="bring-in">
        <ForManager />
      </div>
    </Room>
  )
}

function ForManager() {
  const { takeOut: text } = useLeadWords()
  const count = useSelect((view) => view.sheet?.trees.length ?? 0)
  const isReached = useSelect((view) => view.signal === 'reached')
  const { state, takeTrees, takeHistory, takeHours, takeArchive } = useTakeOut()
  return (
    <>
      {!isReached && <Note icon="nobars">{text.needsSignal}</Note>}
      {state.step !== 'idle' && <Told state={state} />}
      <Panel title={text.treesTitle}>
        <div className="stack">
          <p>{text.treesLead(count)}</p>
          <Button onPress={() => takeTrees('csv')}>{text.asCsv}</Button>
          <Button onPress={() => takeTrees('geojson')}>{text.asGeoJson}</Button>
        </div>
      </Panel>
      <Panel title={text.recordsTitle}>
        <div className="stack">
          <p>{text.recordsLead}</p>
          <Button onPress={takeHistory}>{text.history}</Button>
          <Button onPress={takeHours}>{text.hours}</Button>
        </div>
      </Panel>
      <Panel title={text.archiveTitle}>
        <div className="stack">
          <p>{text.archiveLead}</p>
          <ul className="plain-list">
            {text.archiveNotes.map((note) => (
              <li key={note}>{note}</li>
            ))}
          </ul>
          <Button
            kind="call"
            state={state.step === 'reading' ? 'waiting' : 'ready'}
            onPress={takeArchive}
          >
            {text.archive}
          </Button>
        </div>
      </Panel>
    </>
  )
}

function Told({ state }: { state: ReturnType<typeof useTakeOut>['state'] }) {
  const { takeOut: text } = useLeadWords()
  switch (state.step) {
    case 'idle':
      return null
    case 'reading':
      return <p role="status">{text.reading(state.rows)}</p>
    case 'saved':
      return (
        <Note tone="done" icon="check" role="status">
          {text.saved(state.name)}
        </Note>
      )
    case 'failed':
      return (
        <Note tone="stop" icon="cross" role="alert">
          {state.why === 'moved' ? text.moved : text.failed}
        </Note>
      )
  }
}
