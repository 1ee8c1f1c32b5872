'use client'

import { looksOf, useSelect } from '@/lib/hooks'
import { markNameOf } from '../map/mark-name'
import type { MarkName } from '../ui/Mark'

/** The shape of each tree for whoever reads the sheet: not what is mine. */
export function useMarkOnPaper(): (tree: number) => MarkName {
  const looks = useSelect(looksOf)
  return (no) => {
    const look = looks.get(no)
    return look
      ? markNameOf({ ...look, heldByMe: false, dealtToMe: false, dealtTo: [] })
      : 'unpruned'
  }
}
