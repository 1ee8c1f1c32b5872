'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { groupBy } from '@/lib/util/group-by'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { AddPerson } from './AddPerson'
import { InviteLead } from './InviteLead'
import { LeadScreen } from './LeadScreen'
import { PeopleGroup } from './PeopleGroup'
import { countReady, groups, peopleInOrder } from './readiness'
import { Shed } from './Shed'
import { useLeadWords } from './use-lead-words'

/** Everybody in the crew: who can start, what the others lack; and the tools. */
export function PeopleScreen() {
  const { people: text, count, cameIn } = useLeadWords()
  const lines = useSelect(peopleInOrder)
  const { ready, here } = useSelect(countReady)
  const isManager = useSelect((view) => view.state?.me.role === 'manager')
  const [isAdding, setIsAdding] = useState(false)
  const byGroup = groupBy(lines, ({ group }) => group)

  return (
    <LeadScreen here="people" sideLabel={text.shed} side={<Shed />}>
      <div className="people-head">
        <div>
          <h1>{text.title}</h1>
          <p className="muted">{text.readyOf(ready, here)}</p>
        </div>
        <div className="tree-buttons">
          <ButtonLink icon="people" href={routes.headCount()}>
            {count.title}
          </ButtonLink>
          <ButtonLink icon="clock" href={routes.cameIn()}>
            {cameIn.link}
          </ButtonLink>
          <Button icon="plus" onPress={() => setIsAdding(true)}>
            {text.add}
          </Button>
        </div>
      </div>
      {lines.length <= 1 && <p>{text.nobody}</p>}
      {groups.map((group) => (
        <PeopleGroup key={group} group={group} lines={byGroup.get(group) ?? []} />
      ))}
      {isManager && <InviteLead />}
      <AddPerson open={isAdding} onClose={() => setIsAdding(false)} />
    </LeadScreen>
  )
}
