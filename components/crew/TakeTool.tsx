'use client'

import { useId } from 'react'

import { checksFor } from '@/lib/domain/safety/tool-checks'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { AskedNote } from './AskedNote'
import { FaultTicks } from './FaultTicks'
import { freeTools } from './tools-in-order'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type TakeToolProps = {
  open: boolean
  id: string
  name: string
  onClose: () => void
}

type Taking = { no: number | null; faults: string[] }

const nothing: Taking = { no: null, faults: [] }

/** A tool for somebody: which one, and the short look at it. A fault puts it out of use instead. */
export function TakeTool({ open, id, name, onClose }: TakeToolProps) {
  const { common, tools } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const group = useId()
  const free = useSelect(freeTools)
  const draft = useDraft<Taking>(`take-tool|${id}`, nothing)
  const { asked, ask } = useAsk()
  const tool = free.find(({ no }) => no === draft.value.no)
  const faults = tool ? draft.value.faults : []

  const take = () => {
    if (!tool) return
    const args = { tool: tool.no, failedItems: faults }
    void ask(send('take_tool', args, { personId: id }), () => {
      void draft.writeNow(nothing)
      if (faults.length === 0) onClose()
    })
  }
  return (
    <Dialog open={open} title={text.takeFor} onClose={onClose} closeLabel={common.close}>
      {free.length === 0 && <p>{text.noneFree}</p>}
      <ChoiceGroup label={text.takeFor} hideLabel as="picks">
        {free.map(({ no, label }) => (
          <Pick
            key={no}
            type="radio"
            name={group}
            checked={no === tool?.no}
            onChange={() => draft.write({ no, faults: [] })}
          >
            {label}
          </Pick>
        ))}
      </ChoiceGroup>
      {tool && (
        <>
          <p className="small">{text.checkToolNote}</p>
          <FaultTicks
            label={text.checkTool(tool.label)}
            items={checksFor(tool.kind).map(({ code }) => ({ code, word: tools.faults[code] }))}
            ticked={faults}
            onChange={(next) => draft.write({ no: tool.no, faults: next })}
          />
        </>
      )}
      <AskedNote asked={asked} whose={name} />
      {tool && (
        <Button kind="call" onPress={take}>
          {faults.length === 0 ? text.takeTool(tool.label) : text.failTool(tool.label)}
        </Button>
      )}
    </Dialog>
  )
}
