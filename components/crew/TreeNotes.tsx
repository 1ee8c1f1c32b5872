'use client'

import { useTreeNotes } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { List, ListItem } from '../ui/List'
import { useLeadWords } from './use-lead-words'

/** What was written down for whoever comes to this tree next. */
export function TreeNotes({ tree }: { tree: number }) {
  const words = useWords()
  const { leadMap } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const notes = useTreeNotes(tree)
  // What was marked stands by itself, with its photo.
  const others = notes.state === 'read' ? notes.value.filter(({ kind }) => kind !== 'mark') : []
  return (
    <section className="stack">
      <h3>{leadMap.notes}</h3>
      {notes.state === 'reading' && <p className="small">{words.common.asking}</p>}
      {notes.state === 'failed' && (
        <p className="small">{faultSentence(words, { fault: notes.fault })}</p>
      )}
      {notes.state === 'read' && others.length === 0 && <p className="small">{leadMap.noNotes}</p>}
      {others.length > 0 && (
        <List label={leadMap.notes}>
          {others.map(({ kind, note, at, personId }) => (
            <ListItem
              key={`${kind}${at}`}
              title={note}
              note={`${leadMap.noteKinds[kind]} · ${leadMap.flaggedBy(nameOf(personId), format.clock(new Date(at)))}`}
            />
          ))}
        </List>
      )}
    </section>
  )
}
