import type { ReactNode } from 'react'

import { Icon } from './Icon'
import { joinClasses } from './join-classes'
import type { StepState } from './RowLine'

type StepsProps = {
  /** Roomy: every step has a title and a line. Otherwise only the open one does. */
  roomy?: boolean
  label?: string
  children: ReactNode
}

/** Progress down a row. */
export function Steps({ roomy = false, label, children }: StepsProps) {
  return (
    <ol className={joinClasses('steps', roomy && 'is-roomy')} aria-label={label}>
      {children}
    </ol>
  )
}

type StepProps = {
  state: StepState
  /** What stands in the dot while the step is not done. */
  number?: number
  title: ReactNode
  /** For those who do not see the tick: "done". */
  doneWord: string
  /** Titles of closed steps in a dense list are labels, not headings. */
  heading?: boolean
  children?: ReactNode
}

export function Step({ state, number, title, doneWord, heading = false, children }: StepProps) {
  const isHeading = heading || state === 'now'
  return (
    <li
      className={joinClasses(state !== 'later' && `is-${state}`)}
      aria-current={state === 'now' ? 'step' : undefined}
    >
      <span className="dot" aria-hidden={state === 'done' ? undefined : true}>
        {state === 'done' ? <Icon name="check" size={16} label={doneWord} /> : number}
      </span>
      {isHeading ? <h2>{title}</h2> : <span className="label">{title}</span>}
      {children}
    </li>
  )
}
