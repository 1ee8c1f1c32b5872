'use client'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { ButtonLink } from '../ui/ButtonLink'

/** One tree at a time: the way back to the one in hand. `tree` is null while it is a whole row. */
export function HoldsAnother({ tree }: { tree: number | null }) {
  const { brush, claim } = useWords()
  const tagOf = useTagOf()
  return (
    <CrewScreen
      step={
        <ButtonLink kind="call" href={tree === null ? routes.haul() : routes.tree(tree)}>
          {tree === null ? brush.backToIt : claim.backToIt}
        </ButtonLink>
      }
    >
      <h1>{tree === null ? brush.holdsRow : claim.holdsAnother(tagOf(tree))}</h1>
      <p>{tree === null ? brush.holdsRowNote : claim.holdsAnotherNote}</p>
    </CrewScreen>
  )
}
