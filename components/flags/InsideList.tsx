'use client'

import { type OpenFlag, useSelect, useSend } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Face } from '../ui/Face'
import { List, ListItem } from '../ui/List'

/** Who was at a tree inside the keep-out, and who has come out; a lead says it for whom they saw. */
export function InsideList({ flag }: { flag: OpenFlag }) {
  const { flags: text } = useLeadWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const send = useSend()
  const people = useSelect((view) => view.state?.people)
  const inside = Object.entries(flag.inside)
    .filter(([id]) => people && Object.hasOwn(people, id))
    .toSorted(([, a], [, b]) => Number(a.out) - Number(b.out))
  if (inside.length === 0) return null
  return (
    <List label={text.inside}>
      {inside.map(([personId, { tree, out }]) => {
        const name = nameOf(personId)
        const where = tree === null ? text.wasAtRow : text.wasAt(tagOf(tree))
        return (
          <ListItem
            key={personId}
            lead={<Face name={name} kind={out ? 'plain' : 'ink'} />}
            title={name}
            note={`${where}, ${out ? text.isOut : text.notOut}`}
            end={
              !out && (
                <Button
                  label={text.seenOut(name)}
                  onPress={() => void send('answer_keep_out', { flag: flag.id }, { personId })}
                >
                  {text.seenByMe}
                </Button>
              )
            }
          />
        )
      })}
    </List>
  )
}
