'use client'

import { routes } from '@/lib/routes'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'
import { CheckRow } from '../ui/CheckRow'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Note } from '../ui/Note'

type LookedForProps = {
  people: readonly string[]
  /** An incident is written when the shift closes. */
  writes: boolean
  onWrites: (writes: boolean) => void
}

/** A shift that closes while somebody is looked for: said once more, and proposed as an incident. */
export function LookedFor({ people, writes, onWrites }: LookedForProps) {
  const { shift: text } = useLeadWords()
  const format = useFormat()
  const nameOf = useNameOf()
  if (people.length === 0) return null
  return (
    <div className="stack">
      <Note
        tone="stop"
        icon="person"
        role="alert"
        lead={text.lookedFor(format.list(people.map(nameOf)))}
      >
        {text.lookedForNote}
      </Note>
      <ButtonLink icon="aid" href={routes.emergency()}>
        {text.lookedForCard}
      </ButtonLink>
      <ChoiceGroup label={text.lookedForIncident} hideLabel as="checks">
        <CheckRow checked={writes} onChange={onWrites}>
          {text.lookedForIncident}
        </CheckRow>
      </ChoiceGroup>
    </div>
  )
}
