'use client'

import './bring-in.css'

import { useLeadWords } from '../crew/use-lead-words'
import { Room } from '../rooms/Room'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { BringInForm } from './BringInForm'
import { BroughtInNote } from './BroughtInNote'
import { ChooseFile } from './ChooseFile'
import { useBringIn } from './use-bring-in'
import { useProblemSentence } from './use-problem-sentence'

/** From a file to trees in the orchard: chosen, understood, looked at, brought in. */
export function BringInScreen() {
  const { bringIn: text } = useLeadWords()
  return (
    <Room title={text.title}>
      <div className="bring-in">
        <ForManager />
      </div>
    </Room>
  )
}

function ForManager() {
  const { bringIn: text } = useLeadWords()
  const bringIn = useBringIn()
  const sentenceOf = useProblemSentence(null)
  const { file, said, table, reading, isReady } = bringIn
  if (!isReady) return null
  if (said.value.done) return <BroughtInNote done={said.value.done} said={said} />
  if (file.value === null || table === null) return <ChooseFile file={file} said={said} />
  if (reading === null) {
    return (
      <>
        <Panel>
          <Note tone="stop" icon="cross" role="alert" lead={file.value.name}>
            {'problems' in table && table.problems.map(sentenceOf).join(' ')}
          </Note>
        </Panel>
        <ChooseFile file={file} said={said} title={text.another} />
      </>
    )
  }
  return <BringInForm {...bringIn} reading={reading} file={file} name={file.value.name} />
}
