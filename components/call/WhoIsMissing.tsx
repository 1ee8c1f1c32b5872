'use client'

import { nameOf, useSelect, whoIsWhere } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Face } from '../ui/Face'
import { Note } from '../ui/Note'
import { Pick } from '../ui/Pick'

/** `personId` null: somebody who is not on the list. */
export type Whom = { personId: string | null; tree: number | null }

type WhoIsMissingProps = { whom: Whom | null; onWhom: (whom: Whom) => void }

/** Somebody who was counted in, and where they were last; or somebody else. */
export function WhoIsMissing({ whom, onWhom }: WhoIsMissingProps) {
  const { call } = useWords()
  const people = useSelect((view) =>
    whoIsWhere(view)
      .filter(({ personId }) => personId !== view.me?.personId)
      .map(({ personId, tree, since }) => ({
        personId,
        tree,
        since,
        name: nameOf(view, personId) ?? '',
      }))
      .toSorted((a, b) => a.name.localeCompare(b.name))
  )
  const picked = people.find(({ personId }) => personId === whom?.personId)
  return (
    <>
      <ChoiceGroup label={call.whoIsMissing} hideLabel as="picks">
        {people.map(({ personId, name, tree }) => (
          <Pick
            key={personId}
            type="radio"
            name="whom"
            checked={whom?.personId === personId}
            onChange={() => onWhom({ personId, tree })}
            face={<Face name={name} />}
          >
            {name}
          </Pick>
        ))}
        <Pick
          type="radio"
          name="whom"
          checked={whom !== null && whom.personId === null}
          onChange={() => onWhom({ personId: null, tree: null })}
        >
          {call.somebodyElse}
        </Pick>
      </ChoiceGroup>
      {picked && <LastPlace {...picked} />}
      <p className="small">{call.crewIsTold}</p>
    </>
  )
}

function LastPlace({ name, tree, since }: { name: string; tree: number | null; since: string }) {
  const { call } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  return (
    <Note icon="map" role="status">
      {tree === null
        ? call.lastNowhere(name)
        : call.lastAt(name, tagOf(tree), format.clock(new Date(since)))}
    </Note>
  )
}
