'use client'

import { useMarkPhoto, useSelect, useTreeNotes } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Panel } from '../ui/Panel'

/** What a lead or a skilled person marked on this tree: their words and, if they took one, the photo. */
export function MarkedCuts({ tree }: { tree: number }) {
  const { tree: text } = useWords()
  const nameOf = useNameOf()
  const mark = useSelect((view) => view.state?.marked[tree] ?? null)
  const sent = useSelect((view) => view.confirmed?.marked[tree]?.photo ?? null)
  const notes = useTreeNotes(tree)
  if (!mark) return null
  const note =
    notes.state === 'read' ? notes.value.find(({ kind }) => kind === 'mark')?.note : undefined
  return (
    <Panel title={text.whatTheyMarked(nameOf(mark.by))}>
      {note !== undefined && <p>{note}</p>}
      {sent !== null && <MarkPhoto tree={tree} photo={sent} />}
      {sent === null && mark.photo !== null && <p className="small">{text.markedPhotoLater}</p>}
      <p className="small">{text.markedOnTree}</p>
    </Panel>
  )
}

function MarkPhoto({ tree, photo }: { tree: number; photo: string }) {
  const { common, tree: text } = useWords()
  const tagOf = useTagOf()
  const reading = useMarkPhoto(photo)
  if (reading.state === 'reading') return <p className="small">{common.asking}</p>
  if (reading.state === 'failed') return <p className="small">{text.markedPhotoLater}</p>
  return (
    // biome-ignore lint/performance/noImgElement: it comes with the referee's answer, nothing to optimise
    <img
      className="marked-photo"
      src={`data:image/jpeg;base64,${reading.value.jpeg}`}
      alt={text.markedPhoto(tagOf(tree))}
    />
  )
}
