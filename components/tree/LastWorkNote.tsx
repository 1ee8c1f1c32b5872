'use client'

import { useState } from 'react'
import type { Refusal } from '@/lib/events/answer'
import { useNow, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { useFormat } from '../layout/use-format'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { useRefusalWords, useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { Note } from '../ui/Note'
import { CameInOtherwise, treeOf } from './CameInOtherwise'
import type { DayInHand } from './my-day'
import { undoUntil } from './undo-until'

/** "S 7·14 is done. Your ninth today." and for a while the way back. */
export function LastWorkNote({ day }: { day: DayInHand }) {
  const words = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const now = useNow(5_000)
  const minutes = useSelect((view) => view.state?.orchard.houseRules.undo_minutes ?? 0)
  const { last, done } = day
  const until = last === null || now === null ? null : undoUntil(last.at, minutes, now)
  const cameInOtherwise = useSelect((view) =>
    view.cameInOtherwise.some((kept) => treeOf(kept) === last?.tree)
  )
  if (last === null || until === null) return null
  if (cameInOtherwise) return <CameInOtherwise tree={last.tree} />

  const tag = tagOf(last.tree)
  return (
    <div className="last-work">
      {last.how === 'done' ? (
        <Note tone="done" mark="done" role="status" lead={words.tree.isDone(tag)}>
          {words.tree.yourNth(format.ordinal(done.length))}
        </Note>
      ) : (
        <Note
          tone="work"
          mark="inProgress"
          role="status"
          lead={last.how === 'half' ? words.tree.leftHalf(tag) : words.tree.givenBack(tag)}
        />
      )}
      {last.how !== 'not_begun' && <Undo day={day} tree={last.tree} until={format.clock(until)} />}
    </div>
  )
}

function Undo({ day, tree, until }: { day: DayInHand; tree: number; until: string }) {
  const words = useWords()
  const send = useSend()
  const say = useRefusalWords()
  const go = useGo()
  const [isAsking, setAsking] = useState(false)
  const [refused, setRefused] = useState<readonly Refusal[]>([])
  const [isLost, setLost] = useState(false)

  async function undo(): Promise<void> {
    setAsking(true)
    const sent = await send('undo_tree', { tree })
    setAsking(false)
    setRefused(sent.state === 'refused' ? sent.refused : [])
    setLost(sent.state === 'no_answer' || sent.state === 'failed')
    if (sent.state !== 'accepted') return
    await day.undone()
    go.push(routes.tree(tree))
  }

  return (
    <>
      <Button icon="undo" wide state={isAsking ? 'waiting' : 'ready'} onPress={() => void undo()}>
        {isAsking ? words.common.asking : words.tree.undoUntil(until)}
      </Button>
      {(refused.length > 0 || isLost) && (
        <p className="small" role="alert">
          {isLost ? words.errors.noAnswer : refused.map((refusal) => say(refusal)).join(' ')}
        </p>
      )}
    </>
  )
}
