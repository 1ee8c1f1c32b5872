'use client'

import { useTreeHistory } from '@/lib/hooks'
import { faultSentence } from '@/lib/text/fault'
import { useWords } from '../layout/Words'
import { RoundsOfTree } from './RoundsOfTree'

/** The past of a tree, or why it does not come. */
export function HistoryRead({ tree }: { tree: number }) {
  const words = useWords()
  const reading = useTreeHistory(tree)
  if (reading.state === 'reading') return <p role="status">{words.common.asking}</p>
  if (reading.state === 'failed') return <p>{faultSentence(words, { fault: reading.fault })}</p>
  return <RoundsOfTree history={reading.value} />
}
