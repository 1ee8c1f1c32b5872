'use client'

import { useState } from 'react'

import { myReadiness, myTree, useSelect } from '@/lib/hooks'
import { useStepInHistory } from '../layout/use-step-in-history'
import { ClaimScreen } from './ClaimScreen'
import { HoldsAnother } from './HoldsAnother'
import { useMyDay } from './my-day'
import { NextTree } from './NextTree'
import { NoneLeft } from './NoneLeft'
import { NotReady } from './NotReady'
import { OtherTreeSheet } from './OtherTreeSheet'
import { type Suggestion, suggestedTree } from './suggestions'
import { useTree } from './use-tree'
import { WhereSheet } from './WhereSheet'

type NextTreeScreenProps = {
  /** The tree somebody came here for; null: whichever is next. */
  asked: number | null
}

/** From ready to claimed: the next tree, then the same tree in words, then it is mine. */
export function NextTreeScreen({ asked }: NextTreeScreenProps) {
  const mine = useSelect(myTree)
  const missing = useSelect(myReadiness).filter(({ code }) => code !== 'holds_another')
  const day = useMyDay()
  const [chosen, setChosen] = useState(asked)
  const [step, setStep] = useStepInHistory(`claim ${chosen}`)
  const isConfirming = step > 0
  const [sheet, setSheet] = useState<'other' | 'where' | null>(null)
  const left = day.last && day.last.how !== 'done' ? day.last.tree : null
  const suggested = useSelect((view) => suggestedTree(view, day.at, left))
  const best = suggested.state === 'found' ? suggested.suggestion : null
  const suggestion: Suggestion | null =
    chosen === null || chosen === best?.tree ? best : { tree: chosen, why: 'chosen', walkM: null }
  const facts = useTree(suggestion?.tree ?? null)
  const closeSheet = () => setSheet(null)
  const take = (tree: number) => {
    setChosen(tree)
    closeSheet()
  }

  // While the way to the tree just claimed opens, the claim stays on the screen.
  const isJustClaimed = isConfirming && mine.state === 'held' && mine.tree === chosen
  if (mine.state !== 'none' && !isJustClaimed) return <HoldsAnother tree={mine.tree} />
  if (missing.length > 0 && !isJustClaimed) return <NotReady missing={missing} />
  if (facts && isConfirming)
    return (
      <ClaimScreen
        key={facts.tree.no}
        facts={facts}
        onAnother={() => {
          setStep(0)
          setSheet('other')
        }}
        onTake={setChosen}
      />
    )

  return (
    <>
      {facts && suggestion ? (
        <NextTree
          facts={facts}
          suggestion={suggestion}
          day={day}
          onClaim={() => {
            setChosen(facts.tree.no)
            setStep(1)
          }}
          onOther={() => setSheet('other')}
          onWhere={() => setSheet('where')}
        />
      ) : (
        <NoneLeft
          day={day}
          refusedTrees={suggested.state === 'nothing_left' ? suggested.refusedTrees : new Map()}
          onOther={() => setSheet('other')}
        />
      )}
      {sheet === 'other' && (
        <OtherTreeSheet
          from={day.at}
          not={suggestion?.tree ?? null}
          onTake={take}
          onClose={closeSheet}
        />
      )}
      {sheet === 'where' && (
        <WhereSheet
          from={day.at}
          onHere={(tree) => {
            day.standAt(tree)
            setChosen(null)
            closeSheet()
          }}
          onClose={closeSheet}
        />
      )}
    </>
  )
}
