'use client'

import { checksFor, type ToolCheckCode, type ToolKind } from '@/lib/domain/safety/tool-checks'
import { useWords } from '../layout/Words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'

type FaultPicksProps = {
  kind: ToolKind
  faults: readonly ToolCheckCode[]
  onFault: (fault: ToolCheckCode, isOn: boolean) => void
}

/** What is wrong with a tool, by what one looks at. */
export function FaultPicks({ kind, faults, onFault }: FaultPicksProps) {
  const { tools } = useWords()
  return (
    <ChoiceGroup label={tools.whatIsWrong} as="picks">
      {checksFor(kind).map(({ code }) => (
        <Pick
          key={code}
          type="checkbox"
          checked={faults.includes(code)}
          onChange={(isOn) => onFault(code, isOn)}
        >
          {tools.faults[code]}
        </Pick>
      ))}
    </ChoiceGroup>
  )
}
