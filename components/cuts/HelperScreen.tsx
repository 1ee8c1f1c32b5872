'use client'

import type { ReactNode } from 'react'

import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { TagInHand } from '../tree/TagInHand'
import type { TreeFacts } from '../tree/use-tree'
import { ButtonLink } from '../ui/ButtonLink'

type HelperScreenProps = {
  facts: TreeFacts
  /** The next step; without one it is the way back to the tree. */
  step: ReactNode
  /** The next step already calls the lead. */
  isCalling?: boolean
  children: ReactNode
}

/** A helper of one tree: the way back below, and to the lead for who is not sure. */
export function HelperScreen({
  facts: { tree, tag },
  step,
  isCalling = false,
  children,
}: HelperScreenProps) {
  const { common, cuts } = useWords()
  const back = routes.tree(tree.no)
  return (
    <CrewScreen
      tree={tree.no}
      who={<TagInHand>{tag}</TagInHand>}
      side={
        step && (
          <ButtonLink kind="square" icon="undo" href={back}>
            {common.back}
          </ButtonLink>
        )
      }
      step={
        step || (
          <ButtonLink kind="call" href={back}>
            {cuts.backTo(tag)}
          </ButtonLink>
        )
      }
    >
      {children}
      {!isCalling && (
        <ButtonLink wide icon="call" href={routes.callLead()}>
          {cuts.notSure}
        </ButtonLink>
      )}
    </CrewScreen>
  )
}
