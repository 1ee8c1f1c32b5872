'use client'

import { useState } from 'react'

import type { Claim } from '@/lib/events/state'
import { type BrushRow, useDraft, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { faultSentence } from '@/lib/text/fault'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { useRowTag } from '../sync/use-row-tag'
import { PeopleAtTree } from '../tree/PeopleAtTree'
import { TagInHand } from '../tree/TagInHand'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { HowFarHauled } from './HowFarHauled'
import { type HowFar, placesWithWood, treesHauled } from './how-far'
import { RowFacts } from './RowFacts'
import { useRowWords } from './use-row-words'

type RowInHandProps = {
  row: BrushRow
  claimId: string
  claim: Claim
  isHolder: boolean
}

/** The row I haul: what to mind there, who hauls with me, and how far it is when I go. */
export function RowInHand({ row, claimId, claim, isHolder }: RowInHandProps) {
  const words = useWords()
  const send = useSend()
  const go = useGo()
  const rowTag = useRowTag()
  const rowWords = useRowWords()
  const places = placesWithWood(row)
  const draft = useDraft<HowFar>(`hauled|${claimId}`, {
    how: 'all',
    from: places[0] ?? 0,
    to: places.at(-1) ?? 0,
  })
  const [fault, setFault] = useState<string | null>(null)
  const said = draft.value

  async function finish(): Promise<void> {
    const sent = await send('finish_brush', { claim: claimId, trees: treesHauled(row, said) })
    if (sent.state === 'failed') {
      setFault(faultSentence(words, { fault: sent.fault, code: sent.code ?? undefined }))
      return
    }
    await draft.drop()
    go.push(routes.nextTree())
  }

  return (
    <CrewScreen
      who={<TagInHand>{rowTag(row)}</TagInHand>}
      why={fault && <Why tone="wrong">{fault}</Why>}
      step={
        <Button kind="call" icon="check" onPress={() => void finish()}>
          {said.how === 'all' ? words.brush.finish : words.brush.handBack}
        </Button>
      }
    >
      <h1>{words.brush.inHand(rowWords(row))}</h1>
      <RowFacts row={row} />
      <HowFarHauled places={places} value={said} onChange={draft.write} />
      <PeopleAtTree claimId={claimId} claim={claim} isHolder={isHolder} isRow />
    </CrewScreen>
  )
}
