'use client'

import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Face } from '../ui/Face'
import { Pick } from '../ui/Pick'
import { type ClaimWish, type Company, companies } from './claim-wish'

type CompanyChoiceProps = {
  wish: ClaimWish
  /** The tree asks for ladder or saw, so nobody works on it alone. */
  two: boolean
  /** Who is here and could be named. */
  people: readonly string[]
  onChange: (wish: ClaimWish) => void
}

/** With whom one works: alone unless something else is said. */
export function CompanyChoice({ wish, two, people, onChange }: CompanyChoiceProps) {
  const words = useWords()
  const nameOf = useNameOf()
  const { claim, nextTree } = words
  const label: Record<Company, string> = {
    alone: nextTree.alone,
    helper: claim.withHelper,
    buddy: claim.withBuddy,
    learner: claim.withLearner,
  }
  const offered = companies.filter((company) => !(two && company === 'alone'))
  const byName = people.toSorted((a, b) => nameOf(a).localeCompare(nameOf(b)))
  const asksWho = wish.company !== null && wish.company !== 'alone'
  return (
    <>
      <ChoiceGroup label={nextTree.withWhom} as="picks">
        {offered.map((company) => (
          <Pick
            key={company}
            type="radio"
            name="company"
            checked={wish.company === company}
            onChange={() => onChange({ ...wish, company, person: null })}
          >
            {label[company]}
          </Pick>
        ))}
      </ChoiceGroup>
      {asksWho && people.length === 0 && <p role="status">{claim.nobodyHere}</p>}
      {asksWho && people.length > 0 && (
        <ChoiceGroup label={claim.who} as="picks">
          {byName.map((id) => (
            <Pick
              key={id}
              type="radio"
              name="person"
              checked={wish.person === id}
              onChange={() => onChange({ ...wish, person: id })}
              face={<Face name={nameOf(id)} />}
            >
              {nameOf(id)}
            </Pick>
          ))}
        </ChoiceGroup>
      )}
    </>
  )
}
