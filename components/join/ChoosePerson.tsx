'use client'

import { useRowcall, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useDoorWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { JoinFrame } from './JoinFrame'

/** One device, several people: who holds it now. */
export function ChoosePerson() {
  const { join } = useDoorWords()
  const { choose } = useRowcall()
  const memberships = useSelect((view) => view.memberships)
  return (
    <JoinFrame bench={<ButtonLink href={routes.join()}>{join.someoneElse}</ButtonLink>}>
      <h1>{join.chooseTitle}</h1>
      <p className="muted">{join.chooseWhy}</p>
      <List label={join.chooseTitle}>
        {memberships.map(({ orchardId, orchardName, personId, personName, admitted }) => (
          <ListItem
            key={`${orchardId} ${personId}`}
            lead={<Face name={personName} />}
            title={personName}
            note={admitted ? orchardName : `${orchardName}. ${join.waitsToBeLetIn}`}
            end={<Icon name="right" />}
            onPress={() => choose(orchardId, personId)}
          />
        ))}
      </List>
    </JoinFrame>
  )
}
