'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Note } from '../ui/Note'
import { BenchPicks } from './BenchPicks'
import { ChecksToDo } from './ChecksToDo'
import { ToolsInHand } from './ToolsInHand'
import { ToolsStep } from './ToolsStep'
import { type Check, nextDoing, nothingChecked } from './tool-check'
import { toolFacts } from './tool-facts'

/** Protection and tools: look at each, take what you hold, give back what you do not need. */
export function ToolsScreen() {
  const { tools } = useWords()
  const format = useFormat()
  const facts = useSelect(toolFacts)
  const [check, setCheck] = useState<Check>(nothingChecked)
  const [outOfUse, setOutOfUse] = useState<readonly number[]>([])
  const labels = useSelect((view) => outOfUse.map((no) => view.state?.tools[no]?.label ?? ''))
  const equipment = facts.equipment === 'checked' ? [] : facts.items
  const doing = nextDoing(check, facts.may === 'yes' ? equipment : [])

  return (
    <ToolsStep
      doing={doing}
      check={check}
      facts={facts}
      onDone={(failed) => {
        setCheck(nothingChecked)
        setOutOfUse(failed)
      }}
    >
      <h1>{tools.lookFirst}</h1>
      {facts.may !== 'yes' && (
        <Note icon="clock">
          {facts.may === 'arrive_first' ? tools.arriveFirst : tools.shiftFirst}
        </Note>
      )}
      {facts.equipment === 'failed' && (
        <Note icon="cross" tone="stop" role="status">
          {tools.protectionMissing(
            format.list(facts.missingEquipment.map((code) => equipmentName(tools, code)))
          )}
        </Note>
      )}
      {facts.may === 'yes' && (
        <>
          {labels.length > 0 && (
            <Note icon="cross" tone="stop" role="status" lead={tools.outOfUse(format.list(labels))}>
              {tools.hangItAway}
            </Note>
          )}
          <ChecksToDo check={check} onCheck={setCheck} equipment={equipment} />
          {facts.equipment === 'checked' && (
            <Note icon="check" tone="done">
              {tools.protectionChecked}
            </Note>
          )}
          {facts.inHand.length > 0 && <ToolsInHand inHand={facts.inHand} />}
          <BenchPicks bench={facts.bench} check={check} onCheck={setCheck} />
        </>
      )}
    </ToolsStep>
  )
}

function equipmentName(tools: ReturnType<typeof useWords>['tools'], code: string): string {
  const known: Record<string, { name: string }> = tools.equipment
  return known[code]?.name ?? code
}
