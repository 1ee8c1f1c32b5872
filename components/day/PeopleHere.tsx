'use client'

import { useRowcall, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'

/** One device, several people: a tap changes who holds it. What the other has not sent goes out all the same. */
export function PeopleHere() {
  const { device } = useWords()
  const go = useGo()
  const { choose } = useRowcall()
  const memberships = useSelect((view) => view.memberships)
  const me = useSelect((view) => view.me)

  return (
    <Panel title={device.people}>
      <List label={device.people}>
        {memberships.map(({ orchardId, orchardName, personId, personName }) => {
          const isMe = personId === me?.personId && orchardId === me.orchardId
          return (
            <ListItem
              key={`${orchardId} ${personId}`}
              lead={<Face name={personName} kind={isMe ? 'ink' : 'plain'} />}
              title={isMe ? personName : device.switchTo(personName)}
              note={orchardName}
              end={isMe ? device.current : <Icon name="right" />}
              onPress={
                isMe
                  ? undefined
                  : () => {
                      choose(orchardId, personId)
                      go.push(routes.home())
                    }
              }
            />
          )
        })}
        <ListItem
          lead={<Icon name="plus" />}
          title={device.addPerson}
          note={device.addPersonNote}
          end={<Icon name="right" />}
          href={routes.join()}
        />
      </List>
    </Panel>
  )
}
