'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Dialog } from '../ui/Dialog'
import { allChoices } from './deal-choices'
import { useLeadWords } from './use-lead-words'

type DealToWhomProps = {
  open: boolean
  to: readonly string[]
  onChoose: (personId: string) => void
  onClose: () => void
}

/** Everybody to whom trees can be dealt: one person, or a pair. */
export function DealToWhom({ open, to, onChoose, onClose }: DealToWhomProps) {
  const { common } = useWords()
  const { leadMap } = useLeadWords()
  const nameOf = useNameOf()
  const choices = useSelect(allChoices)
  return (
    <Dialog
      kind="sheet"
      open={open}
      title={leadMap.toWhom}
      onClose={onClose}
      closeLabel={common.close}
    >
      <p className="small">{leadMap.toWhomNote}</p>
      <ChoiceGroup label={leadMap.toWhom} hideLabel as="checks">
        {choices.map(({ personId, isHere }) => (
          <CheckRow
            key={personId}
            checked={to.includes(personId)}
            onChange={() => onChoose(personId)}
            hint={isHere ? undefined : leadMap.notHere}
          >
            {nameOf(personId)}
          </CheckRow>
        ))}
      </ChoiceGroup>
    </Dialog>
  )
}
