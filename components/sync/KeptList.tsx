import type { ReactNode } from 'react'

import { Icon, type IconName } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Panel } from '../ui/Panel'

export type KeptThing = {
  id: string
  icon: IconName
  /** "Tree S 7·14 finished" */
  title: ReactNode
  /** When, and what is to be known about it. */
  note: ReactNode
}

type KeptListProps = {
  kept: readonly KeptThing[]
  label: string
}

/** What is kept on this device, by name and time, so that nobody fears for it. */
export function KeptList({ kept, label }: KeptListProps) {
  return (
    <Panel>
      <List label={label}>
        {kept.map(({ id, icon, title, note }) => (
          <ListItem key={id} lead={<Icon name={icon} />} title={title} note={note} />
        ))}
      </List>
    </Panel>
  )
}
