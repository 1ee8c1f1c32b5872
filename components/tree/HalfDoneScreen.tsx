'use client'

import { useState } from 'react'

import { useDraft, useRowcall, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { faultSentence } from '@/lib/text/fault'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import type { ButtonState } from '../ui/button-look'
import { ChoiceGroup } from '../ui/ChoiceGroup'
import { Pick } from '../ui/Pick'
import { TextArea } from '../ui/TextArea'
import { Why } from '../ui/Why'
import { InHandOnly } from './InHandOnly'
import { useMyDay } from './my-day'
import { TagInHand } from './TagInHand'
import { useStepsDone } from './use-steps-done'
import type { TreeFacts } from './use-tree'

/** As long as the note may be. */
const longestNote = 300
const whyId = 'half-done-why'
const shares = [25, 50, 75] as const

type HalfDone = { share: (typeof shares)[number] | 'not_begun' | null; note: string }

export function HalfDoneScreen({ no }: { no: number | null }) {
  return <InHandOnly no={no}>{(facts) => <LeaveIt facts={facts} />}</InHandOnly>
}

/** Left so that the next one can go on: how far it is, and in a sentence what is left. */
function LeaveIt({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const words = useWords()
  const send = useSend()
  const go = useGo()
  const { workArgs } = useRowcall()
  const day = useMyDay()
  const { forget } = useStepsDone(tree.no)
  const draft = useDraft<HalfDone>(`half-done-${tree.no}`, { share: null, note: '' })
  const [fault, setFault] = useState<string | null>(null)
  const { share, note } = draft.value
  const { tree: text } = words
  const held: ButtonState = share === null ? { state: 'off', describedBy: whyId } : {}
  const shareWords = { 25: text.quarter, 50: text.half, 75: text.threeQuarters }

  async function leave(): Promise<void> {
    if (share === null) return
    const args = await workArgs(tree.no)
    const isBegun = share !== 'not_begun'
    const sent = await send('release_tree', {
      ...args,
      share: isBegun ? share : null,
      note: isBegun ? note.trim() || null : null,
    })
    if (sent.state === 'failed') {
      setFault(faultSentence(words, { fault: sent.fault, code: sent.code ?? undefined }))
      return
    }
    const at = args.at ?? new Date().toISOString()
    await day.worked({ tree: tree.no, how: isBegun ? 'half' : 'not_begun', at })
    await forget()
    await draft.drop()
    go.push(routes.nextTree())
  }

  return (
    <CrewScreen
      tree={tree.no}
      who={<TagInHand>{tag}</TagInHand>}
      why={
        fault ? (
          <Why tone="wrong">{fault}</Why>
        ) : (
          share === null && <Why id={whyId}>{text.chooseHowMuch}</Why>
        )
      }
      side={
        <ButtonLink kind="square" icon="undo" href={routes.tree(tree.no)}>
          {words.common.back}
        </ButtonLink>
      }
      step={
        <Button kind="call" {...held} onPress={() => void leave()}>
          {share === 'not_begun' ? text.leaveNotBegun : text.leaveHalf}
        </Button>
      }
    >
      <h1>{text.halfTitle}</h1>
      <ChoiceGroup label={text.howMuch} as="picks">
        {shares.map((part) => (
          <Pick
            key={part}
            type="radio"
            name="share"
            checked={share === part}
            onChange={() => draft.write({ share: part, note })}
          >
            {shareWords[part]}
          </Pick>
        ))}
        <Pick
          type="radio"
          name="share"
          checked={share === 'not_begun'}
          onChange={() => draft.write({ share: 'not_begun', note })}
        >
          {text.notBegun}
        </Pick>
      </ChoiceGroup>
      {share !== 'not_begun' && (
        <TextArea
          label={text.whatIsLeft}
          hint={text.whatIsLeftHint}
          value={note}
          onChange={(next) => draft.write({ share, note: next })}
          maxLength={longestNote}
        />
      )}
    </CrewScreen>
  )
}
