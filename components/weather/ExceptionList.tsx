'use client'

import { useExceptions } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { useExceptedName } from './use-excepted-name'

/** Every exception with who made it and why, for leads and managers. */
export function ExceptionList() {
  const { weather: text } = useLeadWords()
  const words = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const excepted = useExceptedName()
  const read = useExceptions()
  if (read.state !== 'read') return <p role="status">{words.common.asking}</p>
  if (read.value.length === 0) return <p>{text.noExceptions}</p>
  return (
    <ul className="exceptions">
      {read.value.map(({ id, what, because, note, madeBy, madeAt }) => {
        const at = new Date(madeAt)
        const why = text.because[because as keyof typeof text.because] ?? because
        const day = `${format.date(at)}, ${format.clock(at)}`
        return (
          <li key={id}>
            <b>{day}</b> {text.exceptionLine(excepted(what), why, nameOf(madeBy))}
            {note !== null && <span className="verdict-source">{text.liftedWith(note)}</span>}
          </li>
        )
      })}
    </ul>
  )
}
