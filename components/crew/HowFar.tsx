'use client'

import { useId } from 'react'

import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { useLeadWords } from './use-lead-words'

/** Percent, or not begun. */
export type Share = 25 | 50 | 75 | 'not_begun'

type HowFarProps = {
  label: string
  value: Share | null
  onChange: (share: Share) => void
}

/** How far a tree is, as somebody sees it who stands before it. */
export function HowFar({ label, value, onChange }: HowFarProps) {
  const { tree } = useWords()
  const { leadMap } = useLeadWords()
  const name = useId()
  const choices: readonly { share: Share; word: string }[] = [
    { share: 'not_begun', word: leadMap.notBegun },
    { share: 25, word: tree.quarter },
    { share: 50, word: tree.half },
    { share: 75, word: tree.threeQuarters },
  ]
  return (
    <ChoiceGroup label={label} as="picks">
      {choices.map(({ share, word }) => (
        <Pick
          key={share}
          type="radio"
          name={name}
          checked={value === share}
          onChange={() => onChange(share)}
        >
          {word}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
