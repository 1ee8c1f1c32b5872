'use client'

import { useState } from 'react'

import { useVolunteerHours, type VolunteerHours } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useLeadWords, useWords } from '../layout/Words'
import '../shift/shift.css'
import { Button } from '../ui/Button'
import { ColumnHeads } from '../ui/ColumnHeads'
import { Panel } from '../ui/Panel'
import { SelectField } from '../ui/SelectField'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'
import { hoursByPerson, workedIn } from './season-hours'
import { useDays } from './use-days'
import { useHoursFile } from './use-hours-file'
import { useNamesWith } from './use-names-with'

/** What everybody gave in a season: by person, and by shift; the same on paper. */
export function HoursScreen() {
  const { hours: text } = useLeadWords()
  const [season, setSeason] = useState<number | null>(null)
  const reading = useVolunteerHours(season)
  return (
    <Room title={text.title} lead={text.lead} forLeads>
      <ReadingOf reading={reading}>
        {(read) => (
          <>
            {read.seasons.length > 1 && (
              <div className="room-form screen-only">
                <SelectField
                  label={text.season}
                  options={read.seasons.map((one) => ({ value: String(one), label: String(one) }))}
                  value={String(read.season)}
                  onChange={(one) => setSeason(Number(one))}
                />
              </div>
            )}
            {read.shifts.length === 0 ? <p>{text.none}</p> : <Season read={read} />}
          </>
        )}
      </ReadingOf>
    </Room>
  )
}

function Season({ read }: { read: VolunteerHours }) {
  const { common } = useWords()
  const { hours: text, record } = useLeadWords()
  const format = useFormat()
  const { day } = useDays()
  const nameOf = useNamesWith(read.names)
  const saveHours = useHoursFile()
  const people = hoursByPerson(read)
  const duration = (seconds: number) => format.duration(seconds / 60)
  const all = people.reduce((sum, { workedS }) => sum + workedS, 0)
  return (
    <>
      <p className="lead">
        {`${text.season} ${read.season}. `}
        {text.total(
          duration(all),
          common.people(people.length),
          text.shiftCount(read.shifts.length)
        )}
      </p>
      <Panel title={text.byPerson}>
        <table className="record-table hours-table">
          <ColumnHeads heads={[text.name, text.shifts, text.worked, text.onBreak, record.done]} />
          <tbody>
            {people.map(({ person, shifts, workedS, breakS, done }) => (
              <tr key={person}>
                <th scope="row">{nameOf(person)}</th>
                <td className="num">{shifts}</td>
                <td className="num">{duration(workedS)}</td>
                <td className="num">{duration(breakS)}</td>
                <td className="num">{done}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Panel>
      <Panel title={text.byShift}>
        <table className="record-table hours-table">
          <ColumnHeads heads={[text.day, text.people, text.worked]} />
          <tbody>
            {read.shifts.map((shift) => (
              <tr key={shift.shift}>
                <th scope="row">
                  {day(shift.date)}
                  {shift.state === 'open' && <span className="small"> ({text.isOpen})</span>}
                </th>
                <td className="num">{shift.people.filter(({ hereS }) => hereS > 0).length}</td>
                <td className="num">{duration(workedIn(shift))}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Panel>
      <div className="row wrap screen-only">
        <Button icon="print" onPress={() => window.print()}>
          {text.print}
        </Button>
        <Button onPress={() => saveHours(read, String(read.season))}>{text.asCsv}</Button>
      </div>
      <p className="small screen-only">{text.asCsvNote}</p>
    </>
  )
}
