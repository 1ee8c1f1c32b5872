'use client'

import { type MyFlag, useMyFlags, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { List, ListItem } from '../ui/List'
import { Mark } from '../ui/Mark'
import { Tag } from '../ui/Tag'
import { signWords } from './flag-words'

/** What became of what I reported; nothing is said while nothing is known. */
export function MyReports() {
  const words = useWords()
  const tagOf = useTagOf()
  const became = useBecame()
  const reading = useMyFlags()
  if (reading.state !== 'read' || reading.value.length === 0) return null
  const { mine } = words.flag
  return (
    <section className="stack" aria-label={mine.title}>
      <h2>{mine.title}</h2>
      <List label={mine.title}>
        {reading.value.map((flag) => (
          <ListItem
            key={flag.flag}
            lead={<Mark name={flag.kind} size={24} />}
            title={signWords(words, flag.kind, flag.sign)}
            note={became(flag)}
            end={<Tag>{tagOf(flag.tree)}</Tag>}
          />
        ))}
      </List>
    </section>
  )
}

function useBecame(): (flag: MyFlag) => string {
  const { mine } = useWords().flag
  const format = useFormat()
  const nameOf = useNameOf()
  const me = useSelect((view) => view.me?.personId)
  return ({ state, confirmedBy, endedBy, why, doneOn }) => {
    switch (state) {
      case 'suspected':
        return mine.suspected
      case 'open':
        return mine.open
      case 'confirmed':
        return mine.confirmed(nameOf(confirmedBy ?? ''))
      case 'withdrawn':
        if (endedBy === me) return mine.withdrawnByYou
        return why === null
          ? mine.withdrawn(nameOf(endedBy ?? ''))
          : mine.withdrawnWhy(nameOf(endedBy ?? ''), why)
      case 'cleared':
        // A day has no hour: noon is the same day everywhere near.
        return mine.cleared(doneOn === null ? '' : format.date(new Date(`${doneOn}T12:00:00Z`)))
    }
  }
}
