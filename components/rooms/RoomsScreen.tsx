'use client'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { usePeopleWaiting } from '../crew/use-people-waiting'
import { useLeadWords } from '../layout/Words'
import { plannedShifts } from '../shift/coming-shift'
import { Icon, type IconName } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'
import { Room } from './Room'

/** Where everything is that a manager sets up, looks up or ends; each room one press away. */
export function RoomsScreen() {
  const words = useLeadWords()
  const { rooms: text } = words
  const people = useSelect((view) => Object.keys(view.state?.people ?? {}).length)
  const openRounds = useSelect((view) => Object.keys(view.state?.rounds ?? {}).length)
  const planned = useSelect((view) => plannedShifts(view).length)
  const blocks = useSelect((view) => view.sheet?.blocks.length ?? 0)
  const waiting = usePeopleWaiting()

  return (
    <Room title={text.title} lead={text.lead} back={null}>
      <div className="room-groups is-stacked">
        <Panel title={text.crewGroup}>
          <List label={text.crewGroup}>
            <Way
              icon="people"
              href={routes.people()}
              title={words.people.title}
              note={waiting > 0 ? text.waiting(waiting) : text.peopleNote(people)}
            />
            <Way
              icon="send"
              href={routes.invites()}
              title={words.invites.title}
              note={text.invitesNote}
            />
            <Way
              icon="clock"
              href={routes.hours()}
              title={words.hours.title}
              note={text.hoursNote}
            />
            <Way icon="house" href={routes.left()} title={text.leftTitle} note={text.leftNote} />
          </List>
        </Panel>
        <Panel title={text.workGroup}>
          <List label={text.workGroup}>
            <Way
              icon="wheel"
              href={routes.rounds()}
              title={words.rounds.title}
              note={text.roundsNote(openRounds)}
            />
            <Way
              icon="sun"
              href={routes.shifts()}
              title={words.shifts.title}
              note={text.shiftsNote(planned)}
            />
            <Way
              icon="clock"
              href={routes.season()}
              title={words.season.title}
              note={words.season.roomNote}
            />
            <Way icon="eye" href={routes.audit()} title={text.auditTitle} note={text.auditNote} />
          </List>
        </Panel>
        <Panel title={text.groundGroup}>
          <List label={text.groundGroup}>
            <Way
              icon="map"
              href={routes.ground()}
              title={words.ground.title}
              note={words.ground.roomNote(blocks)}
            />
            <Way
              icon="plus"
              href={routes.bringIn()}
              title={words.bringIn.title}
              note={words.bringIn.note}
            />
            <Way
              icon="kept"
              href={routes.takeOut()}
              title={words.takeOut.title}
              note={words.takeOut.note}
            />
            <Way
              icon="edit"
              href={routes.settings()}
              title={words.settings.title}
              note={text.settingsNote}
            />
            <Way
              icon="map"
              href={routes.aerial()}
              title={words.aerial.title}
              note={words.aerial.note}
            />
            <Way
              icon="info"
              href={routes.houseRules()}
              title={words.houseRules.title}
              note={text.houseRulesNote}
            />
            <Way
              icon="print"
              href={routes.labels()}
              title={words.labels.title}
              note={text.labelsNote}
            />
          </List>
        </Panel>
      </div>
    </Room>
  )
}

type WayProps = { icon: IconName; href: string; title: string; note: string }

function Way({ icon, ...item }: WayProps) {
  return <ListItem {...item} lead={<Icon name={icon} />} end={<Icon name="right" />} />
}
