'use client'

import type { EquipmentCode } from '@/lib/domain/safety/equipment'
import { checksFor } from '@/lib/domain/safety/tool-checks'
import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import type { IconName } from '../ui/Icon'
import { CheckItem } from './CheckItem'
import { FaultPicks } from './FaultPicks'
import { type Check, withFault, withFound } from './tool-check'
import { toolIcons, useToolName } from './use-tool-name'

type ChecksToDoProps = {
  check: Check
  onCheck: (check: Check) => void
  /** Protection still to be looked at. */
  equipment: readonly EquipmentCode[]
}

const equipmentIcons: Record<EquipmentCode, IconName> = {
  eye_protection: 'glasses',
  gloves: 'glove',
  shoes: 'shoe',
  long_sleeves: 'sleeves',
  helmet: 'helmet',
}

/** The protection that waits for a look. */
export function ChecksToDo({ check, onCheck, equipment }: ChecksToDoProps) {
  const { tools } = useWords()
  return (
    <ul>
      {equipment.map((code) => (
        <CheckItem
          key={code}
          icon={equipmentIcons[code]}
          name={tools.equipment[code].name}
          checks={[tools.equipment[code].check]}
          found={check.equipment[code] ?? null}
          onFound={(found) =>
            onCheck({ ...check, equipment: { ...check.equipment, [code]: found } })
          }
        >
          <p className="label">{tools.noProtection}</p>
        </CheckItem>
      ))}
    </ul>
  )
}

type ToolToCheckProps = { no: number; check: Check; onCheck: (check: Check) => void }

/** A tool that was picked from the bench, to be looked at before it is taken. */
export function ToolToCheck({ no, check, onCheck }: ToolToCheckProps) {
  const { tools } = useWords()
  const nameOfTool = useToolName()
  const tool = useSelect((view) => view.state?.tools[no])
  const looked = check.tools.find((one) => one.no === no)
  if (!tool || !looked) return null
  const name = nameOfTool(tool)
  return (
    <CheckItem
      icon={toolIcons[tool.kind]}
      name={name}
      checks={checksFor(tool.kind).map(({ code }) => tools.checks[code])}
      found={looked.found}
      onFound={(found) => onCheck(withFound(check, no, found))}
    >
      <FaultPicks
        kind={tool.kind}
        faults={looked.faults}
        onFault={(fault, isOn) => onCheck(withFault(check, no, fault, isOn))}
      />
      <p>
        <b>{tools.willBeOutOfUse(name)}</b> {tools.hangItAway}
      </p>
    </CheckItem>
  )
}
