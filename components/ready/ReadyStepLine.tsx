'use client'

import { routes } from '@/lib/routes'
import { useStartWords } from '../layout/Words'
import { Step } from '../ui/Steps'
import type { ReadyStep, StepName } from './ready-steps'
import { useStepWords } from './use-step-words'
import './ready.css'

type ReadyStepLineProps = {
  step: ReadyStep
  /** The first that is mine to do. */
  isNow: boolean
  /** Its place among what is mine to do. */
  number: number
}

/** What leads to a step by itself; the others are done on the spot or by somebody else. */
const ways: Partial<Record<StepName, string>> = {
  stopped: routes.stopWork(),
  consent: routes.consent(),
  briefing: routes.briefing(),
  equipment: routes.tools(),
  tools: routes.tools(),
  on_break: routes.breakOrLeave(),
}

const looks = { done: 'done', mine: 'later', wait: 'off' } as const

/** One step: what it is, how it stands, and the way to it. */
export function ReadyStepLine({ step, isNow, number }: ReadyStepLineProps) {
  const { common } = useStartWords()
  const { title, note } = useStepWords(step)
  const href = ways[step.name]
  return (
    <Step
      state={isNow ? 'now' : looks[step.state]}
      {...(step.state === 'mine' && { number })}
      heading
      title={
        href === undefined ? (
          title
        ) : (
          <a className="way" href={href}>
            {title}
          </a>
        )
      }
      doneWord={common.doneStep}
    >
      <p className="small">{note}</p>
    </Step>
  )
}
