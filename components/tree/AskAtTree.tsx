'use client'

import type { ReactNode } from 'react'

import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import type { IconName } from '../ui/Icon'
import { Reasons } from './Reasons'
import { type Question, useAsk } from './use-ask'

type AskAtTreeProps = Question & {
  icon: IconName
  /** The next step of this screen. */
  call?: boolean
  children: ReactNode
}

/** A button that asks, waits, and says why if it was not to be. */
export function AskAtTree({ icon, call = false, children, ...question }: AskAtTreeProps) {
  const { common } = useWords()
  const { ask, isAsking, reasons } = useAsk()
  return (
    <div className="grow">
      <Reasons reasons={reasons} />
      <Button
        wide
        kind={call ? 'call' : 'plain'}
        icon={icon}
        state={isAsking ? 'waiting' : 'ready'}
        onPress={() => void ask(question)}
      >
        {isAsking ? common.asking : children}
      </Button>
    </div>
  )
}
