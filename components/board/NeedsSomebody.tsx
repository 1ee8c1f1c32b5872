'use client'

import { useState } from 'react'

import { useNow, useSelect } from '@/lib/hooks'
import { type Heard, HeardEachMinute } from '../crew/HeardEachMinute'
import { useLeadWords } from '../crew/use-lead-words'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { daySoFar } from './day-so-far'
import { useDayWords } from './use-day-words'

const usualQuietMinutes = 15

/** What needs somebody, the most urgent first; each sentence leads to where one acts. */
export function NeedsSomebody() {
  const { daySoFar: text } = useLeadWords()
  const words = useDayWords()
  const now = useNow(30_000)
  const [heardAt, setHeardAt] = useState<Heard | null>(null)
  const facts = useSelect((view) => {
    const quietMinutes = view.state?.orchard.houseRules.quiet_minutes ?? usualQuietMinutes
    return now ? daySoFar(view, { now, heardAt, quietMinutes }) : []
  })
  return (
    <section className="needs" aria-label={text.title}>
      <h2>{text.title}</h2>
      <HeardEachMinute onHeard={setHeardAt} />
      {facts.length === 0 && <p className="muted">{text.none}</p>}
      <List label={text.title}>
        {facts.map((fact) => {
          const { says, note, icon, href } = words(fact)
          return (
            <ListItem
              key={JSON.stringify(fact)}
              lead={<Icon name={icon} />}
              title={says}
              note={note}
              href={href}
            />
          )
        })}
      </List>
    </section>
  )
}
