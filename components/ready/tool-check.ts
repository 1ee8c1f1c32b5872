/** A check half done: what was looked at, what was found, and what the next step can be. */

import type { EquipmentCode } from '@/lib/domain/safety/equipment'
import type { ToolCheckCode } from '@/lib/domain/safety/tool-checks'

export type Found = 'in_order' | 'fault'

export type Check = {
  equipment: Partial<Record<EquipmentCode, Found>>
  /** Tools picked from the bench, by number, in the order they were picked. */
  tools: readonly { no: number; found: Found | null; faults: readonly ToolCheckCode[] }[]
}

export const nothingChecked: Check = { equipment: {}, tools: [] }

export type NextDoing =
  /** Something is not looked at yet. */
  | { state: 'look_first' }
  | { state: 'say_fault' }
  | {
      state: 'send'
      failedEquipment: readonly EquipmentCode[] | null
      takes: readonly number[]
      fails: readonly number[]
    }
  /** Nothing is open. */
  | { state: 'go_on' }

/** `asked`: the protection that is still to be looked at. */
export function nextDoing({ equipment, tools }: Check, asked: readonly EquipmentCode[]): NextDoing {
  if (asked.length === 0 && tools.length === 0) return { state: 'go_on' }
  const isOpen =
    asked.some((code) => equipment[code] === undefined) || tools.some(({ found }) => found === null)
  if (isOpen) return { state: 'look_first' }
  if (tools.some(({ found, faults }) => found === 'fault' && faults.length === 0)) {
    return { state: 'say_fault' }
  }
  return {
    state: 'send',
    failedEquipment:
      asked.length === 0 ? null : asked.filter((code) => equipment[code] === 'fault'),
    takes: tools.filter(({ found }) => found === 'in_order').map(({ no }) => no),
    fails: tools.filter(({ found }) => found === 'fault').map(({ no }) => no),
  }
}

/** Picked from the bench, or laid back. */
export function withPicked(check: Check, no: number, isPicked: boolean): Check {
  const others = check.tools.filter((tool) => tool.no !== no)
  return { ...check, tools: isPicked ? [...others, { no, found: null, faults: [] }] : others }
}

export function withFound(check: Check, no: number, found: Found): Check {
  return {
    ...check,
    tools: check.tools.map((tool) => (tool.no === no ? { ...tool, found } : tool)),
  }
}

export function withFault(check: Check, no: number, fault: ToolCheckCode, isOn: boolean): Check {
  return {
    ...check,
    tools: check.tools.map((tool) =>
      tool.no === no
        ? {
            ...tool,
            faults: [...tool.faults.filter((one) => one !== fault), ...(isOn ? [fault] : [])],
          }
        : tool
    ),
  }
}
