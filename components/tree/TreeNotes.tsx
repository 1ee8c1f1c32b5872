'use client'

import { useTreeNotes } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'

/** What others wrote about this tree in this round; without signal what was read last. */
export function TreeNotes({ tree }: { tree: number }) {
  const { tree: text } = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const reading = useTreeNotes(tree)
  // What was marked stands by itself, with its photo.
  const notes = reading.state === 'read' ? reading.value.filter(({ kind }) => kind !== 'mark') : []
  if (notes.length === 0) return null
  return (
    <Panel title={text.history}>
      <List label={text.history}>
        {notes.map(({ kind, note, at, personId }) => (
          <ListItem
            key={`${kind} ${at}`}
            title={note}
            note={`${nameOf(personId)}, ${format.clock(new Date(at))}`}
          />
        ))}
      </List>
    </Panel>
  )
}
