'use client'

import { myTree, useSelect } from '@/lib/hooks'
import { useMyDay } from '../tree/my-day'

/** The tree in hand, else the one I worked at last or said that I stand at. */
export function useWhereIAm(): { tree: number; isInHand: boolean } | null {
  const { at } = useMyDay()
  const inHand = useSelect((view) => {
    const mine = myTree(view)
    return mine.state === 'none' ? null : mine.tree
  })
  if (inHand !== null) return { tree: inHand, isInHand: true }
  return at === null ? null : { tree: at, isInHand: false }
}
