'use client'

import type { Refusal } from '@/lib/events/answer'
import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { refusalWords } from '../sync/refusal-words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'

/** Says refusals to a lead, of the work of the person they act for. */
export function useRefusalsOf(whose?: string): (refusal: Refusal) => string {
  const words = useWords()
  const person = useNameOf()
  const tree = useTagOf()
  const format = useFormat()
  const blocks = useSelect((view) => view.ground.blocks)
  const tools = useSelect((view) => view.state?.tools)
  return (refusal) =>
    refusalWords(words, refusal, {
      tree,
      person,
      tool: (no) => tools?.[no]?.label ?? String(no),
      block: (no) => blocks.get(no)?.code ?? '',
      clock: format.clock,
      whose,
    })
}
