'use client'

import type { Refusal } from '@/lib/events/answer'
import { useRefusalWords } from '../sync/use-refusal-words'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'
import { wayOn } from './ways-on'

type MissingListProps = {
  label: string
  missing: readonly Refusal[]
  /** The tree that was asked for, and the one to take instead. */
  tree?: number | undefined
  take?: number | undefined
}

/** Everything that stands in the way, each with the way to mend it where there is one. */
export function MissingList({ label, missing, tree, take }: MissingListProps) {
  const say = useRefusalWords()
  return (
    <Panel>
      <List label={label}>
        {missing.map((refusal) => {
          const href = wayOn(refusal)
          return (
            <ListItem
              key={refusal.code}
              lead={<Icon name="cross" />}
              title={say(refusal, { tree, take })}
              href={href}
              end={href && <Icon name="right" />}
            />
          )
        })}
      </List>
    </Panel>
  )
}
