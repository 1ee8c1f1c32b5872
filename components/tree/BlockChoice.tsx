'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'

type BlockChoiceProps = {
  value: number | null
  onChange: (block: number) => void
}

/** One of the orchard's blocks; not asked where there is only one. */
export function BlockChoice({ value, onChange }: BlockChoiceProps) {
  const { findTree } = useWords()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  if (blocks.length < 2) return null
  return (
    <ChoiceGroup label={findTree.block} as="picks">
      {blocks.map((block) => (
        <Pick
          key={block.no}
          type="radio"
          name="block"
          checked={value === block.no}
          onChange={() => onChange(block.no)}
        >
          {block.code} · {block.name}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
