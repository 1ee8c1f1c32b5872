'use client'

import { myTree, useSelect } from '@/lib/hooks'
import { NoSuchTree } from './NoSuchTree'
import { TreeCard } from './TreeCard'
import { TreeInHand } from './TreeInHand'
import { useTree } from './use-tree'

/** One tree: in my hand with what to cut, or as it stands for everybody else. */
export function TreeScreen({ no }: { no: number | null }) {
  const facts = useTree(no)
  const mine = useSelect(myTree)
  if (!facts) return <NoSuchTree />
  if (mine.state !== 'none' && mine.tree === facts.tree.no)
    return <TreeInHand key={facts.tree.no} facts={facts} mine={mine} />
  return <TreeCard facts={facts} />
}
