'use client'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'

/** No wood lies anywhere: back to the trees. */
export function NoRow() {
  const { brush } = useWords()
  return (
    <CrewScreen
      step={
        <ButtonLink kind="call" href={routes.nextTree()}>
          {brush.toTrees}
        </ButtonLink>
      }
    >
      <h1>{brush.none}</h1>
      <p>{brush.noneNote}</p>
    </CrewScreen>
  )
}
