'use client'

import { toolsInHand, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'

export const tickNames = ['wood', 'tools', 'blades'] as const
export type Ticks = Record<(typeof tickNames)[number], boolean>

type FinishTicksProps = {
  ticks: Ticks
  /** Flagged for disease: then the blades must be ticked. */
  isSick: boolean
  onChange: (ticks: Ticks) => void
}

/** Three things before one walks on. */
export function FinishTicks({ ticks, isSick, onChange }: FinishTicksProps) {
  const { tree: text } = useWords()
  const format = useFormat()
  const tools = useSelect((view) => toolsInHand(view).map(({ label }) => label))
  const words: Record<keyof Ticks, string> = {
    wood: text.woodInAlley,
    tools: tools.length > 0 ? text.toolsNamed(format.list(tools)) : text.toolsWithYou,
    blades: text.bladesWiped,
  }
  return (
    <div className="ticks">
      <ChoiceGroup label={text.beforeYouWalkOn} as="checks">
        {tickNames.map((name) => (
          <CheckRow
            key={name}
            checked={ticks[name]}
            next={isSick && name === 'blades'}
            onChange={(checked) => onChange({ ...ticks, [name]: checked })}
            hint={isSick && name === 'blades' ? text.bladesWhy : undefined}
          >
            {words[name]}
          </CheckRow>
        ))}
      </ChoiceGroup>
    </div>
  )
}
