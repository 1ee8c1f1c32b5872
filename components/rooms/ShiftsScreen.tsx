'use client'

import { type ShiftRead, useNow, useSelect, useShifts } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { dayIn } from '@/lib/util/day-in'
import { useLeadWords } from '../layout/Words'
import { PlannedShifts } from '../shift/PlannedShifts'
import '../shift/shift.css'
import { ButtonLink } from '../ui/ButtonLink'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'
import { ReadingOf } from './ReadingOf'
import { Room } from './Room'
import { useDays } from './use-days'

/** Shifts to come, to be changed or called off, and those of the past, each with its record. */
export function ShiftsScreen() {
  const { shifts: text } = useLeadWords()
  const reading = useShifts()
  const zone = useSelect((view) => view.state?.orchard.timeZone ?? 'UTC')
  const now = useNow(60_000)
  return (
    <Room title={text.title} forLeads>
      {now && <PlannedShifts today={dayIn(zone, now)} />}
      <p>
        <ButtonLink href={routes.shift()}>{text.toShift}</ButtonLink>
      </p>
      <Panel title={text.past}>
        <ReadingOf reading={reading}>
          {(shifts) => (shifts.length === 0 ? <p>{text.none}</p> : <Past shifts={shifts} />)}
        </ReadingOf>
      </Panel>
    </Room>
  )
}

function Past({ shifts }: { shifts: readonly ShiftRead[] }) {
  const { shifts: text, shift: words } = useLeadWords()
  const { day } = useDays()
  return (
    <List label={text.past}>
      {shifts.map(({ shift, date, state, kind, season, people, done }) => (
        <ListItem
          key={shift}
          title={day(date)}
          note={[
            words.roundIs(words.kinds[kind], String(season)),
            state === 'open' && text.isOpen,
            state === 'cancelled' && text.calledOff,
            state !== 'cancelled' && text.people(people),
            state !== 'cancelled' && text.done(done),
          ]
            .filter(Boolean)
            .join(', ')}
          href={state === 'cancelled' ? undefined : routes.shiftRecord(shift)}
          end={state === 'cancelled' ? undefined : <Icon name="right" />}
        />
      ))}
    </List>
  )
}
