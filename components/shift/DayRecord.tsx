'use client'

import { type ShiftRecord, useSelect, useShiftRecord } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ColumnHeads } from '../ui/ColumnHeads'
import { Panel } from '../ui/Panel'
import { recordCsv, totalsOf, workedS } from './day-record'
import { saveFile } from './save-file'

/** Hours, trees and answers of a shift; null: of the one that was opened last. */
export function DayRecord({ shiftId }: { shiftId: string | null }) {
  const words = useWords()
  const { record: text } = useLeadWords()
  const reading = useShiftRecord(shiftId)
  if (reading.state === 'read' && reading.value === null) return null
  return (
    <Panel title={text.title}>
      {reading.state === 'reading' && <p>{words.common.asking}</p>}
      {reading.state === 'failed' && <p>{faultSentence(words, { fault: reading.fault })}</p>}
      {reading.state === 'read' && reading.value && <Numbers record={reading.value} />}
    </Panel>
  )
}

function Numbers({ record }: { record: ShiftRecord }) {
  const { common } = useWords()
  const { record: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const blocks = useSelect((view) => view.ground.blocks)
  const { people, workedS: allS, done, begun } = totalsOf(record)
  const clock = (at: string) => format.clock(new Date(at))
  const hours = (seconds: number) => format.duration(seconds / 60)
  const byName = record.people.toSorted((a, b) => nameOf(a.person).localeCompare(nameOf(b.person)))

  const save = () => {
    const csv = recordCsv({ ...record, people: byName }, text.heads, { nameOf, clockOf: clock })
    saveFile(`rowcall-${record.date}.csv`, csv)
  }
  return (
    <div className="stack">
      <p className="lead">
        {text.total(common.people(people), hours(allS), common.trees(done), begun)}
      </p>
      <ul className="plain-list">
        {record.blocks.map((block) => (
          <li key={block.block}>
            {text.block(blocks.get(block.block)?.name ?? '', block.done, block.begun)}
          </li>
        ))}
        {record.stops.map(({ stop, calledAt, resumedAt, answers }) => (
          <li key={stop}>
            {text.stop(clock(calledAt), resumedAt === null ? text.stillOn : clock(resumedAt))}{' '}
            {text.answered(new Set(answers.map(({ person }) => person)).size)}
          </li>
        ))}
      </ul>
      <table className="record-table">
        <ColumnHeads heads={[text.name, text.worked, text.done, text.begun, text.helped]} />
        <tbody>
          {byName.map((one) => (
            <tr key={one.person}>
              <th scope="row">{nameOf(one.person)}</th>
              <td className="num">{hours(workedS(one))}</td>
              <td className="num">{one.done}</td>
              <td className="num">{one.begun}</td>
              <td className="num">{one.helped}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Button onPress={save}>{text.save}</Button>
    </div>
  )
}
