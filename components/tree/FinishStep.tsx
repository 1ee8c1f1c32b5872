'use client'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Why } from '../ui/Why'
import { type Ticks, tickNames } from './FinishTicks'

type FinishStepProps = {
  ticks: Ticks
  mustTick: boolean
  onFinish: () => void
}

const whyId = 'finish-why'

/**
 * Saying that the tree is finished also says that the three things are so: one tap, no typing. Only
 * where disease was flagged the blades are ticked by themselves first, since they carry it on.
 */
export function FinishStep({ ticks, mustTick, onFinish }: FinishStepProps) {
  const { tree: text } = useWords()
  const left = tickNames.filter((name) => !ticks[name]).length
  if (mustTick && !ticks.blades)
    return (
      <div className="grow">
        <Why id={whyId}>{text.tickFirst}</Why>
        <Button kind="call" wide state="off" describedBy={whyId} sub={text.leftToTick(1)}>
          {text.finish}
        </Button>
      </div>
    )
  return (
    <Button kind="call" onPress={onFinish} sub={left > 0 ? text.finishSays : undefined}>
      {text.finish}
    </Button>
  )
}
