'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'

/** "row S 7", in the middle of a sentence. */
export function useRowWords(): (row: { block: number; row: number }) => string {
  const { brush } = useWords()
  const blocks = useSelect((view) => view.ground.blocks)
  return ({ block, row }) => brush.row(blocks.get(block)?.code ?? '', row)
}
