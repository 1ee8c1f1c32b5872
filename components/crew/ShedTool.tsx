'use client'

import { useState } from 'react'

import { useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { toolIcons } from '../ready/use-tool-name'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Icon } from '../ui/Icon'
import { ListItem } from '../ui/List'
import { AskedNote } from './AskedNote'
import { FailTool } from './FailTool'
import { ToolFault } from './ToolFault'
import type { NumberedTool } from './tools-in-order'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** One tool: where it is; a press opens what can be done about it. */
export function ShedTool({ tool }: { tool: NumberedTool }) {
  const { common, things } = useWords()
  const { people: text } = useLeadWords()
  const nameOf = useNameOf()
  const send = useSend()
  const [isOpen, setIsOpen] = useState(false)
  const { asked, ask } = useAsk()
  const { no, label, kind, fit, clean, heldBy } = tool
  const where = heldBy === null ? text.inShed : text.with(nameOf(heldBy))
  const faults = [fit ? null : text.outOfUse, clean ? null : text.notClean]
  const close = () => setIsOpen(false)

  return (
    <>
      <ListItem
        lead={<Icon name={fit ? toolIcons[kind] : 'lock'} />}
        title={`${label} · ${things.tool[kind]}`}
        note={[...faults, where].filter(Boolean).join(', ')}
        onPress={() => setIsOpen(true)}
      />
      {isOpen && (
        <Dialog
          open
          title={`${label} · ${things.tool[kind]}`}
          onClose={close}
          closeLabel={common.close}
        >
          <p>{[...faults, where].filter(Boolean).join(', ')}</p>
          {!fit && <ToolFault no={no} />}
          <AskedNote asked={asked} />
          {heldBy !== null && (
            <Button
              label={text.giveBackTool(label)}
              onPress={() => ask(send('return_tool', { tool: no }, { personId: heldBy }))}
            >
              {text.giveBackTool(label)}
            </Button>
          )}
          {!clean && (
            <Button onPress={() => ask(send('clean_tool', { tools: [no] }))}>
              {text.cleanTool(label)}
            </Button>
          )}
          {fit ? (
            <FailTool tool={tool} onDone={close} />
          ) : (
            <Button kind="call" onPress={() => ask(send('mend_tool', { tool: no }), close)}>
              {text.mend}
            </Button>
          )}
        </Dialog>
      )}
    </>
  )
}
