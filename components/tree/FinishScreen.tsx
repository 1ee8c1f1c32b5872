'use client'

import { useState } from 'react'
import { hasFlag } from '@/lib/events/look-ups'
import { useRowcall, useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { faultSentence } from '@/lib/text/fault'
import { CrewScreen } from '../layout/CrewScreen'
import { useGo } from '../layout/use-go'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Why } from '../ui/Why'
import { AfterPhoto } from './AfterPhoto'
import { FinishStep, FinishWhy } from './FinishStep'
import { FinishTicks, type Ticks } from './FinishTicks'
import { HowFar } from './HowFar'
import { InHandOnly } from './InHandOnly'
import { useMyDay } from './my-day'
import { TagInHand } from './TagInHand'
import { useStepsDone } from './use-steps-done'
import type { TreeFacts } from './use-tree'

export function FinishScreen({ no }: { no: number | null }) {
  return <InHandOnly no={no}>{(facts) => <Finish facts={facts} />}</InHandOnly>
}

/** Look back once, tick what is asked before one walks on, done. */
function Finish({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const words = useWords()
  const send = useSend()
  const go = useGo()
  const { workArgs } = useRowcall()
  const day = useMyDay()
  const { forget } = useStepsDone(tree.no)
  const isSick = useSelect((view) => view.state !== null && hasFlag(view.state, tree.no, 'disease'))
  const [ticks, setTicks] = useState<Ticks>({ wood: false, tools: false, blades: false })
  const [fault, setFault] = useState<string | null>(null)

  async function finish(): Promise<void> {
    const args = await workArgs(tree.no)
    const sent = await send('finish_tree', args)
    if (sent.state === 'failed') {
      setFault(faultSentence(words, { fault: sent.fault, code: sent.code ?? undefined }))
      return
    }
    await day.worked({ tree: tree.no, how: 'done', at: args.at ?? new Date().toISOString() })
    await forget()
    go.push(routes.nextTree())
  }

  return (
    <CrewScreen
      tree={tree.no}
      who={<TagInHand>{tag}</TagInHand>}
      why={fault ? <Why tone="wrong">{fault}</Why> : <FinishWhy ticks={ticks} mustTick={isSick} />}
      side={
        <ButtonLink kind="square" icon="undo" href={routes.tree(tree.no)}>
          {words.common.back}
        </ButtonLink>
      }
      step={<FinishStep ticks={ticks} mustTick={isSick} onFinish={() => void finish()} />}
    >
      <h1>{words.tree.finishTitle}</h1>
      <HowFar tree={tree.no} />
      <FinishTicks ticks={ticks} isSick={isSick} onChange={setTicks} />
      <AfterPhoto tree={tree.no} />
      <p className="small">{words.tree.sawSomething}</p>
    </CrewScreen>
  )
}
