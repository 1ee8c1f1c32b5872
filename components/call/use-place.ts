'use client'

import { myTree, useSelect, whoIsWhere } from '@/lib/hooks'
import { useMyDay } from '../tree/my-day'

export type Place = { tree: number; isInHand: boolean }

/** Of this device's person the tree in hand, else where they were last; of somebody else the tree in hand. */
export function usePlace(forPerson: string | null): Place | null {
  const { at } = useMyDay()
  const inHand = useSelect((view) => {
    const mine = myTree(view)
    if (forPerson === null) return mine.state === 'none' ? null : mine.tree
    return whoIsWhere(view).find(({ personId }) => personId === forPerson)?.tree ?? null
  })
  if (inHand !== null) return { tree: inHand, isInHand: true }
  return forPerson !== null || at === null ? null : { tree: at, isInHand: false }
}
