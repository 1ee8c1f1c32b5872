'use client'

import { useState } from 'react'

import { type MyTree, useNow } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { CrewScreen, Signal, useHolder } from '../layout/CrewScreen'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { Note } from '../ui/Note'
import { ConditionsLine } from '../weather/ConditionsLine'
import { AboutTree, ThisWinter } from './AboutTree'
import { DiseaseNote } from './DiseaseNote'
import { FoundHere } from './FoundAtMyTrees'
import { guardDoubleTap } from './guard-double-tap'
import { MarkedCuts } from './MarkedCuts'
import { PeopleAtTree } from './PeopleAtTree'
import { StuckSheet } from './StuckSheet'
import { stepWords } from './step-words'
import { TagInHand } from './TagInHand'
import { ageWords, bearingWords, kindWords } from './tree-words'
import { useStepsDone } from './use-steps-done'
import { type TreeFacts, useThisYear } from './use-tree'
import { useWorkCard } from './use-work-card'
import { WorkSteps } from './WorkSteps'

type TreeInHandProps = {
  facts: TreeFacts
  mine: Exclude<MyTree, { state: 'none' }>
}

/** What to cut here, step by step, with who is at the tree and the way out of every trouble. */
export function TreeInHand({ facts, mine }: TreeInHandProps) {
  const { tree, cultivar, tag } = facts
  const words = useWords()
  const thisYear = useThisYear()
  const { stepsDone, setStepsDone } = useStepsDone(tree.no)
  const [isStuck, setStuck] = useState(false)
  const [isMeant] = useState(guardDoubleTap)
  const format = useFormat()
  const { card, isNeglected, setNeglected } = useWorkCard(facts)
  const { steps, form } = card
  const step = steps[stepsDone]
  const age = ageWords(words, tree, thisYear)
  const shape = words.whatToCut.form[form]

  return (
    <CrewScreen
      tree={tree.no}
      who={
        <span className="row">
          <TagInHand>{tag}</TagInHand>
          <HeldFor since={mine.state === 'held' ? mine.claim.openedAt : mine.begunAt} />
        </span>
      }
      end={<Signal />}
      side={
        <Button kind="square" icon="info" onPress={() => setStuck(true)}>
          {words.tree.stuck}
        </Button>
      }
      step={
        step ? (
          <Button
            kind="call"
            sub={
              stepsDone + 1 < steps.length
                ? words.tree.thenStep(stepsDone + 2)
                : words.tree.thenFinish
            }
            onPress={() => {
              if (isMeant(performance.now())) setStepsDone(stepsDone + 1)
            }}
          >
            {stepWords(words, format, step).done}
          </Button>
        ) : (
          <ButtonLink kind="call" href={routes.finishTree(tree.no)}>
            {words.tree.finishTitle}
          </ButtonLink>
        )
      }
    >
      <div>
        <h1 className="kind">{kindWords(words, tree, cultivar)}</h1>
        <p className="small">
          {age ? words.tree.age(age, shape) : shape}, {bearingWords(words, cultivar)}
        </p>
      </div>
      <ThisWinter tree={tree} card={card} isNeglected={isNeglected} />
      {mine.state === 'not_confirmed' && (
        <Note tone="call" icon="clock" lead={words.tree.notConfirmed}>
          {words.claim.beginWhy}
        </Note>
      )}
      <ConditionsLine species={tree.species} />
      <FoundHere tree={tree.no} />
      <DiseaseNote tree={tree} />
      <MarkedCuts tree={tree.no} />
      <WorkSteps card={card} done={stepsDone} tree={tree} onGoTo={setStepsDone} />
      {step && (
        <ButtonLink wide href={routes.finishTree(tree.no)}>
          {words.tree.allSteps}
        </ButtonLink>
      )}
      <AboutTree tree={tree} card={card} isNeglected={isNeglected} onNeglected={setNeglected} />
      {mine.state === 'held' && (
        <PeopleAtTree claimId={mine.claimId} claim={mine.claim} isHolder={mine.isHolder} />
      )}
      {isStuck && <StuckSheet tree={tree.no} onClose={() => setStuck(false)} />}
    </CrewScreen>
  )
}

/** "yours for 48 min"; the minutes only say how long, they end nothing. */
function HeldFor({ since }: { since: string }) {
  const words = useWords()
  const format = useFormat()
  const now = useNow()
  const holder = useHolder()
  if (now === null) return null
  const duration = format.duration((now.getTime() - Date.parse(since)) / 60_000)
  return (
    <span className="held-for">
      {holder === null ? words.tree.yoursSince(duration) : words.tree.theirsSince(holder, duration)}
    </span>
  )
}
