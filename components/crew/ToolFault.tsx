'use client'

import { useToolFaults } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'
import { useLeadWords } from './use-lead-words'

/** Why a tool is out of use: what was ticked and written, by whom and when. */
export function ToolFault({ no }: { no: number }) {
  const { tools } = useWords()
  const { people: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const read = useToolFaults()
  const fault = read.state === 'read' ? read.value[no] : undefined
  if (fault === undefined) return null
  const words: Record<string, string> = tools.faults
  const at = new Date(fault.at)
  return (
    <Note icon="warn" lead={text.failedBy(nameOf(fault.by), format.date(at), format.clock(at))}>
      {[...fault.failed.map((code) => words[code] ?? code), fault.note].filter(Boolean).join('. ')}
    </Note>
  )
}
