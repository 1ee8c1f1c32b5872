'use client'

import { useId, useState } from 'react'

import { type ToolKind, toolKinds } from '@/lib/domain/safety/tool-checks'
import { useDraft, useSelect, useSend } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { Pick } from '../ui/Pick'
import { TextField } from '../ui/TextField'
import { useTries } from '../ui/use-tries'
import { Why } from '../ui/Why'
import { AskedNote } from './AskedNote'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

type AddToolProps = {
  open: boolean
  onClose: () => void
}

type NewTool = { kind: ToolKind | null; label: string }

const newTool: NewTool = { kind: null, label: '' }

/** A tool on the list, by the label that stands on it. The kind stays for the next one. */
export function AddTool({ open, onClose }: AddToolProps) {
  const { common, things } = useWords()
  const { people: text } = useLeadWords()
  const send = useSend()
  const name = useId()
  const draft = useDraft<NewTool>('add-tool', newTool)
  const { wasTried, tried, startAgain } = useTries()
  const { asked, ask } = useAsk()
  const { kind, label } = draft.value
  const [added, setAdded] = useState<string | null>(null)
  const written = label.trim()
  const isTaken = useSelect((view) =>
    Object.values(view.state?.tools ?? {}).some((tool) => isSameLabel(tool.label, written))
  )

  const add = () => {
    tried()
    if (kind === null || written === '' || isTaken) return
    void ask(send('add_tool', { label: written, kind, ownedBy: null }), () => {
      startAgain()
      setAdded(written)
      void draft.writeNow({ kind, label: '' })
    })
  }
  return (
    <Dialog open={open} title={text.addToolTitle} onClose={onClose} closeLabel={common.close}>
      <ChoiceGroup label={text.toolKind} as="picks">
        {toolKinds.map((one) => (
          <Pick
            key={one}
            type="radio"
            name={name}
            checked={one === kind}
            onChange={() => draft.write({ ...draft.value, kind: one })}
          >
            {things.tool[one]}
          </Pick>
        ))}
      </ChoiceGroup>
      {wasTried && kind === null && <Why tone="wrong">{text.chooseKind}</Why>}
      <TextField
        label={text.label}
        hint={text.labelHint}
        value={label}
        maxLength={20}
        onChange={(next) => draft.write({ ...draft.value, label: next })}
        fault={isTaken ? text.labelTaken(written) : wasTried && written === '' && text.writeLabel}
      />
      {added !== null && written === '' && <p role="status">{text.isOnTheList(added)}</p>}
      <AskedNote asked={asked} />
      <Button kind="call" state={asked.state === 'asking' ? 'waiting' : 'ready'} onPress={add}>
        {text.addToolButton}
      </Button>
    </Dialog>
  )
}

/** A label is read on steel in the rain: capitals make no other tool. */
function isSameLabel(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase()
}
