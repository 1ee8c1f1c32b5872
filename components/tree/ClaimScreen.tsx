'use client'

import { useState } from 'react'

import { placeInWords } from '@/lib/domain/planning/place-in-words'
import { myDealtTrees, refusalsFor, useSelect, whoIsWhere } from '@/lib/hooks'
import { placeSentences } from '@/lib/text/place-in-words'
import { CrewScreen } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useRefusalWords } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Plate } from '../ui/Plate'
import { ClaimAsked } from './ClaimAsked'
import { ClaimRefused } from './ClaimRefused'
import { ClaimStep } from './ClaimStep'
import { CompanyChoice } from './CompanyChoice'
import { asksForTwo, firstWish, isSaid, wishOf } from './claim-wish'
import { HaulersNear } from './HaulersNear'
import { LadderChoice } from './LadderChoice'
import { MarkedCuts } from './MarkedCuts'
import { MissingList } from './MissingList'
import { plateCells } from './tree-words'
import { useClaim } from './use-claim'
import type { TreeFacts } from './use-tree'
import { wayOn } from './ways-on'

type ClaimScreenProps = {
  facts: TreeFacts
  onAnother: () => void
  onTake: (tree: number) => void
}

/** The tree in words, so that the right one is claimed; then the claim itself. */
export function ClaimScreen({ facts, onAnother, onTake }: ClaimScreenProps) {
  const { tree, block } = facts
  const words = useWords()
  const format = useFormat()
  const sheet = useSelect((view) => view.sheet)
  const me = useSelect((view) => view.me?.personId ?? '')
  const partner = useSelect((view) => view.state?.deals[tree.no]?.find((id) => id !== me) ?? null)
  const [wish, setWish] = useState(() => firstWish(tree, partner))
  const known = useSelect((view) => refusalsFor(view, tree.no, wishOf(wish)))
  const others = useSelect((view) =>
    whoIsWhere(view)
      .filter(({ personId, state }) => personId !== me && state === 'here')
      .filter(({ tree: at, row }) => wish.company === 'buddy' || (at === null && row === null))
      .map(({ personId }) => personId)
  )
  const say = useRefusalWords()
  const { asked, ask, begin } = useClaim(tree.no)
  const two = asksForTwo(tree, wish)
  const isDealt = useSelect((view) => myDealtTrees(view).includes(tree.no))
  const mayBegin = isDealt && !two

  if (asked.state === 'refused')
    return <ClaimRefused facts={facts} asked={asked} onAnother={onAnother} onTake={onTake} />
  const missing = isSaid(tree, wish) ? known : []
  // A single reason without a way to mend it stands above the button, and needs no list.
  const hasWays = missing.some((refusal) => wayOn(refusal) !== undefined)
  const waits = !isSaid(tree, wish) ? 'company' : missing.length > 0 ? 'missing' : null
  return (
    <CrewScreen
      tree={tree.no}
      why={
        <ClaimAsked
          asked={asked}
          isDealt={isDealt}
          mayBegin={mayBegin}
          waits={waits}
          missing={missing.map((refusal) => say(refusal, { tree: tree.no }))}
        />
      }
      side={
        <Button kind="square" icon="cross" label={words.nextTree.notThisOne} onPress={onAnother}>
          {words.common.no}
        </Button>
      }
      step={
        <ClaimStep
          facts={facts}
          asked={asked}
          mayBegin={mayBegin}
          isOff={waits !== null}
          onClaim={() => ask(wish)}
          onBegin={begin}
        />
      }
    >
      <h1>{words.nextTree.confirmTitle}</h1>
      <div className="row">
        <Plate
          label={words.common.treeSpoken(block.name, tree.row, tree.place)}
          cells={plateCells(words, tree, block)}
        />
      </div>
      <p className="place">
        {placeSentences(words, format, placeInWords(tree, block, sheet?.trees ?? []))}{' '}
        {words.nextTree.isIt}
      </p>
      <MarkedCuts tree={tree.no} />
      <HaulersNear tree={tree} overhead={wish.ladder || tree.asksSaw} />
      <LadderChoice tree={tree} wish={wish} onChange={setWish} />
      <CompanyChoice wish={wish} two={two} people={others} onChange={setWish} />
      {missing.length > 0 && (hasWays || missing.length > 1) && (
        <MissingList label={words.claim.everythingMissing} missing={missing} tree={tree.no} />
      )}
    </CrewScreen>
  )
}
