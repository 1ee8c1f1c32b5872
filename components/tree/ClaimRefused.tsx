'use client'

import type { Refusal } from '@/lib/events/answer'
import { routes } from '@/lib/routes'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Why } from '../ui/Why'
import { MissingList } from './MissingList'
import type { Asked } from './use-claim'
import type { TreeFacts } from './use-tree'
import { wayOn } from './ways-on'

type ClaimRefusedProps = {
  facts: TreeFacts
  asked: Extract<Asked, { state: 'refused' }>
  onAnother: () => void
  onTake: (tree: number) => void
}

/** Somebody was first, or something is missing: all of it, and the tree to take instead. */
export function ClaimRefused({ facts, asked, onAnother, onTake }: ClaimRefusedProps) {
  const { claim, nextTree, ready } = useWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const { refused, next } = asked
  const first = whoWasFirst(refused)
  const isMine = refused.some((refusal) => wayOn(refusal) !== undefined)
  return (
    <CrewScreen
      tree={facts.tree.no}
      why={
        first !== null &&
        next !== null && <Why tone="wrong">{nextTree.wasFirst(nameOf(first), tagOf(next))}</Why>
      }
      side={
        next !== null && (
          <Button kind="square" icon="other" label={nextTree.otherTree} onPress={onAnother}>
            {nextTree.other}
          </Button>
        )
      }
      step={
        next !== null ? (
          <Button kind="call" onPress={() => onTake(next)}>
            {claim.takeInstead(tagOf(next))}
          </Button>
        ) : isMine ? (
          <ButtonLink kind="call" href={routes.ready()}>
            {ready.title}
          </ButtonLink>
        ) : (
          <Button kind="call" onPress={onAnother}>
            {nextTree.otherTree}
          </Button>
        )
      }
    >
      <h1>{claim.refusedTitle(facts.tag)}</h1>
      <h2>{claim.everythingMissing}</h2>
      <MissingList
        label={claim.everythingMissing}
        missing={refused}
        tree={facts.tree.no}
        take={next ?? undefined}
      />
    </CrewScreen>
  )
}

function whoWasFirst(refused: readonly Refusal[]): string | null {
  const held = refused.find(({ code }) => code === 'tree_held')
  return typeof held?.detail?.person === 'string' ? held.detail.person : null
}
