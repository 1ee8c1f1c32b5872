'use client'

import './bring-in.css'

import { useSelect } from '@/lib/hooks'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
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
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  return (
    <LeadScreen here="shift">
      <div className="bring-in">
        <h1>{text.title}</h1>
        {isManager ? <ForManager /> : <p>{text.onlyManager}</p>}
      </div>
    </LeadScreen>
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
