'use client'

import { useId } from 'react'

import { checksFor } from '@/lib/domain/safety/tool-checks'
import { useDraft, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { FaultTicks } from './FaultTicks'
import type { NumberedTool } from './tools-in-order'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type FailToolProps = {
  tool: NumberedTool
  onDone: () => void
}

type Failing = { items: string[]; note: string }

const nothingWrong: Failing = { items: [], note: '' }

/** Puts a tool out of use: what is wrong with it is kept for whoever mends it. */
export function FailTool({ tool, onDone }: FailToolProps) {
  const { tools } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const draft = useDraft<Failing>(`fail-tool|${tool.no}`, nothingWrong)
  const { asked, ask } = useAsk()
  const { items, note } = draft.value
  const words = note.trim()
  const isSaid = items.length > 0 || words !== ''

  const fail = () =>
    ask(
      send('fail_tool', { tool: tool.no, failedItems: items, note: words === '' ? null : words }),
      () => {
        void draft.writeNow(nothingWrong)
        onDone()
      }
    )
  return (
    <div className="stack">
      <FaultTicks
        label={text.whatIsWrong}
        items={checksFor(tool.kind).map(({ code }) => ({ code, word: tools.faults[code] }))}
        ticked={items}
        onChange={(next) => draft.write({ ...draft.value, items: next })}
      />
      <TextField
        label={text.failNote}
        value={note}
        maxLength={300}
        onChange={(next) => draft.write({ ...draft.value, note: next })}
      />
      <AskedNote asked={asked} />
      {!isSaid && <Why id={whyId}>{text.sayWhatIsWrong}</Why>}
      {isSaid ? (
        <Button onPress={fail}>{text.failTool(tool.label)}</Button>
      ) : (
        <Button state="off" describedBy={whyId}>
          {text.failTool(tool.label)}
        </Button>
      )}
    </div>
  )
}
