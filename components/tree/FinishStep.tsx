'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { type Ticks, tickNames } from './FinishTicks'

const whyId = 'finish-why'

type FinishStepProps = {
  ticks: Ticks
  mustTick: boolean
  onFinish: () => void
}

/**
 * Saying that the tree is finished also says that the three things are so: one tap, no typing. Only
 * where disease was flagged the blades are ticked by themselves first, since they carry it on.
 */
export function FinishStep({ ticks, mustTick, onFinish }: FinishStepProps) {
  const { tree: text } = useWords()
  if (mustTick && !ticks.blades)
    return (
      <Button kind="call" state="off" describedBy={whyId} sub={text.leftToTick(1)}>
        {text.finish}
      </Button>
    )
  const isAllTicked = tickNames.every((name) => ticks[name])
  return (
    <Button kind="call" onPress={onFinish} sub={isAllTicked ? undefined : text.finishSays}>
      {text.finish}
    </Button>
  )
}

/** Above the button while it waits. */
export function FinishWhy({ ticks, mustTick }: Omit<FinishStepProps, 'onFinish'>) {
  const { tree: text } = useWords()
  return mustTick && !ticks.blades ? <Why id={whyId}>{text.tickFirst}</Why> : null
}
