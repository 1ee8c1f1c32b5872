'use client'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'

/** One tree at a time: the way back to the one in hand. `tree` is null while it is a whole row. */
export function HoldsAnother({ tree }: { tree: number | null }) {
  const { claim } = useWords()
  const tagOf = useTagOf()
  return (
    <CrewScreen
      step={
        tree !== null && (
          <ButtonLink kind="call" href={routes.tree(tree)}>
            {claim.backToIt}
          </ButtonLink>
        )
      }
    >
      {tree !== null && <h1>{claim.holdsAnother(tagOf(tree))}</h1>}
      <p>{claim.holdsAnotherNote}</p>
    </CrewScreen>
  )
}
