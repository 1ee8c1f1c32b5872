'use client'

import { type DragEvent, useState } from 'react'

import { textOfFile } from '@/lib/domain/orchard/file-text'
import type { InventoryProblem } from '@/lib/domain/orchard/inventory-problem'
import { mostBytes, tooBig } from '@/lib/domain/orchard/inventory-table'
import type { Draft } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { TextArea } from '../ui/TextArea'
import { type ChosenFile, nothingSaid } from './bring-in-draft'
import { FileButton } from './FileButton'
import type { SaidDraft } from './use-bring-in'
import { useProblemSentence } from './use-problem-sentence'

type ChooseFileProps = { file: Draft<ChosenFile | null>; said: SaidDraft; title?: string }

/** A file by its button, dropped on the panel, or pasted from a spreadsheet. */
export function ChooseFile({ file, said, title }: ChooseFileProps) {
  const { bringIn: text } = useLeadWords()
  const sentenceOf = useProblemSentence(null)
  const [wrong, setWrong] = useState<InventoryProblem | 'not_read' | null>(null)
  const [pasted, setPasted] = useState('')
  const [isOver, setIsOver] = useState(false)

  const take = (chosen: ChosenFile) => {
    setWrong(null)
    void said.writeNow(nothingSaid)
    void file.writeNow(chosen)
  }
  const read = async (picked: File | undefined) => {
    if (!picked) return
    const read = picked.size > mostBytes ? tooBig(picked.size) : await contentOf(picked)
    if (read === null) setWrong('not_read')
    else if ('problems' in read) setWrong(read.problems[0] ?? null)
    else take({ name: picked.name, ...read })
  }
  const drop = (event: DragEvent) => {
    event.preventDefault()
    setIsOver(false)
    void read(event.dataTransfer.files[0])
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is the third way; the button and the field are the others
    <div
      className={isOver ? 'drop-here is-over' : 'drop-here'}
      onDragOver={(event) => {
        event.preventDefault()
        setIsOver(true)
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={drop}
    >
      <Panel>
        <div className="stack">
          {title === undefined ? <p>{text.lead}</p> : <h2>{title}</h2>}
          <p className="small">{text.needs}</p>
          {wrong !== null && (
            <Note tone="stop" icon="cross" role="alert">
              {wrong === 'not_read' ? text.notRead : sentenceOf(wrong)}
            </Note>
          )}
          <FileButton label={text.choose} onFile={read} />
          <p className="small">{text.chooseHint}</p>
          <TextArea
            label={text.paste}
            hint={text.pasteHint}
            value={pasted}
            onChange={setPasted}
            rows={4}
          />
          {pasted.trim() !== '' && (
            <Button
              onPress={() => take({ name: text.pastedName, text: pasted, encoding: 'utf-8' })}
            >
              {text.readPasted}
            </Button>
          )}
        </div>
      </Panel>
    </div>
  )
}

/** Null: the device could not read it. */
async function contentOf(
  picked: File
): Promise<Pick<ChosenFile, 'text' | 'encoding'> | { problems: InventoryProblem[] } | null> {
  try {
    const read = textOfFile(new Uint8Array(await picked.arrayBuffer()))
    if (read.text !== null) return read
    return { problems: [{ line: 1, column: null, code: read.why, found: '', allowed: '' }] }
  } catch {
    return null
  }
}
