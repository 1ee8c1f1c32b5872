'use client'

import { useSelect } from '@/lib/hooks'

/** The tag of a row, "S 7": as that of a tree, without the tree. */
export function useRowTag(): (row: { block: number; row: number }) => string {
  const blocks = useSelect((view) => view.ground.blocks)
  return ({ block, row }) => `${blocks.get(block)?.code ?? ''} ${row}`.trim()
}
