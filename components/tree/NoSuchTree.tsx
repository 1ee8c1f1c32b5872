'use client'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'

/** An address with a number that no tree has. */
export function NoSuchTree() {
  const { findTree, tree } = useWords()
  return (
    <CrewScreen
      step={
        <ButtonLink kind="call" href={routes.nextTree()}>
          {tree.toNextTree}
        </ButtonLink>
      }
    >
      <h1>{findTree.noSuchTree}</h1>
      <p>{findTree.noSuchTreeWhy}</p>
    </CrewScreen>
  )
}
