'use client'

import { Count } from '../ui/Count'
import { List } from '../ui/List'
import { PersonRow } from './PersonRow'
import type { Group, PersonLine } from './readiness'
import { useLeadWords } from './use-lead-words'

type PeopleGroupProps = {
  group: Group
  lines: readonly PersonLine[]
}

/** People for whom the same comes next. */
export function PeopleGroup({ group, lines }: PeopleGroupProps) {
  const { people: text } = useLeadWords()
  if (lines.length === 0) return null
  return (
    <section className="people-group" aria-label={text[group]}>
      <h2>
        {text[group]} <Count>{lines.length}</Count>
      </h2>
      <List label={text[group]}>
        {lines.map((line) => (
          <PersonRow key={line.id} line={line} />
        ))}
      </List>
    </section>
  )
}
