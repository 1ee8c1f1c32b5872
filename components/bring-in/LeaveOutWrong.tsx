'use client'

import { useLeadWords } from '../crew/use-lead-words'
import { CheckRow } from '../ui/CheckRow'
import type { Reading } from './reading'
import type { SaidDraft } from './use-bring-in'

type LeaveOutWrongProps = { reading: Reading; said: SaidDraft }

/** Somebody's choice, made for just these rows: when others are wrong it is asked again. */
export function LeaveOutWrong({ reading, said }: LeaveOutWrongProps) {
  const { bringIn: text } = useLeadWords()
  const { wrongLines, isLeftOut, matching } = reading
  if (reading.problems.some(({ code }) => code.startsWith('column_'))) return null
  // Without places a row that is left out would give its number to the next tree.
  if (matching.every(({ column }) => column !== 'place')) return <p>{text.cannotLeaveOut}</p>
  return (
    <CheckRow
      checked={isLeftOut}
      onChange={(isOn) => said.write({ ...said.value, leftOut: isOn ? [...wrongLines] : [] })}
      hint={text.leaveOutHint}
    >
      {text.leaveOut(wrongLines.length)}
    </CheckRow>
  )
}
