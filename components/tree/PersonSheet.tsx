'use client'

import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Dialog } from '../ui/Dialog'
import { Face } from '../ui/Face'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Reasons } from './Reasons'
import { type Question, useAsk } from './use-ask'

type PersonSheetProps = {
  title: string
  why?: string
  people: readonly string[]
  /** What to say where there is nobody. */
  none?: string
  ask: (personId: string) => Question
  onClose: () => void
}

/** Picks one person, asks, and closes when it is so. */
export function PersonSheet({
  title,
  why,
  people,
  none,
  ask: questionFor,
  onClose,
}: PersonSheetProps) {
  const { common } = useWords()
  const nameOf = useNameOf()
  const { ask, isAsking, reasons } = useAsk()

  const byName = people.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b)))

  async function choose(personId: string): Promise<void> {
    if (!isAsking && (await ask(questionFor(personId)))) onClose()
  }

  return (
    <Dialog open kind="sheet" title={title} closeLabel={common.close} onClose={onClose}>
      {why !== undefined && <p>{why}</p>}
      {isAsking && <p role="status">{common.asking}</p>}
      <Reasons reasons={reasons} />
      {people.length === 0 && none !== undefined && <p>{none}</p>}
      <List label={title}>
        {byName.map((id) => (
          <ListItem
            key={id}
            lead={<Face name={nameOf(id)} />}
            title={nameOf(id)}
            end={<Icon name="right" />}
            onPress={() => void choose(id)}
          />
        ))}
      </List>
    </Dialog>
  )
}
