'use client'

import type { ReactNode } from 'react'

import { type TreeHistory, useTreeHistory } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { RoundsOfTree } from './RoundsOfTree'

type HistoryReadProps = { tree: number; children?: (history: TreeHistory) => ReactNode }

/** The past of a tree, or why it does not come; below it what can be done with it. */
export function HistoryRead({ tree, children }: HistoryReadProps) {
  const words = useWords()
  const reading = useTreeHistory(tree)
  if (reading.state === 'reading') return <p role="status">{words.common.asking}</p>
  if (reading.state === 'failed') return <p>{faultSentence(words, { fault: reading.fault })}</p>
  return (
    <>
      <RoundsOfTree history={reading.value} />
      {children?.(reading.value)}
    </>
  )
}
