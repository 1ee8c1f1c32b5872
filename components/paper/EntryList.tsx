'use client'

import { lackWords } from '../crew/lack-words'
import { useLeadWords } from '../crew/use-lead-words'
import { useRefusalsOf } from '../crew/use-refusals-of'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Icon, type IconName } from '../ui/Icon'
import { type Entry, isIn } from './entry'
import type { useEntries } from './use-entries'
import { useEntryWords } from './use-entry-words'

/** Every line that was typed, and what became of it. */
export function EntryList({ entries }: { entries: ReturnType<typeof useEntries> }) {
  const { fromPaper: text } = useLeadWords()
  const { entries: lines } = entries.sheet
  if (lines.length === 0) return <p className="muted">{text.none}</p>
  return (
    <ul className="list entry-list">
      {lines.map((entry) => (
        <EntryLine key={entry.id} entry={entry} entries={entries} />
      ))}
    </ul>
  )
}

type EntryLineProps = { entry: Entry; entries: ReturnType<typeof useEntries> }

function EntryLine({ entry, entries }: EntryLineProps) {
  const { fromPaper: text } = useLeadWords()
  const nameOf = useNameOf()
  const lineWords = useEntryWords()
  const line = lineWords(entry)
  const who = nameOf(entry.typed.person)
  const isSending = entries.sending === entry.id
  return (
    <li className="entry-line">
      <Icon name={isSending ? 'clock' : iconOf(entry)} />
      <span className="grow">
        <b>
          {who}: {line}
        </b>
        <span className="small" role="status">
          {isSending ? text.sending : <Became entry={entry} />}
        </span>
      </span>
      {!isIn(entry) && !isSending && (
        <>
          <Button
            label={text.changeLine(`${who}, ${line}`)}
            onPress={() => void entries.change(entry)}
          >
            {text.change}
          </Button>
          <Button
            label={text.takeOutLine(`${who}, ${line}`)}
            onPress={() => void entries.takeOut(entry.id)}
          >
            {text.takeOut}
          </Button>
        </>
      )}
    </li>
  )
}

function Became({ entry: { outcome, typed } }: { entry: Entry }) {
  const { fromPaper: text, people } = useLeadWords()
  const format = useFormat()
  const refusal = useRefusalsOf(useNameOf()(typed.person))
  switch (outcome?.state) {
    case undefined:
      return text.toSend
    case 'kept':
      return text.kept
    case 'no_answer':
      return text.noAnswer
    case 'failed':
      return text.failed
    case 'refused':
      return outcome.refused.map(refusal).join(' ')
    case 'accepted': {
      const said = { also_worked: text.also, late: text.late }
      const came = outcome.kept === null ? text.entered : said[outcome.kept]
      const lacked = format.list(lackWords(people, outcome.missing))
      return lacked ? `${came} ${text.missing(lacked)}` : came
    }
  }
}

function iconOf({ outcome }: Entry): IconName {
  switch (outcome?.state) {
    case 'accepted':
      return 'check'
    case 'kept':
      return 'kept'
    case 'refused':
    case 'failed':
      return 'cross'
    default:
      return 'clock'
  }
}
