'use client'

import type { ReactNode } from 'react'

import { myTree, useSelect } from '@/lib/hooks'
import { NoSuchTree } from './NoSuchTree'
import { TreeCard } from './TreeCard'
import { type TreeFacts, useTree } from './use-tree'

type InHandOnlyProps = {
  no: number | null
  children: (facts: TreeFacts) => ReactNode
}

/** For what one does with the tree in hand; any other tree is shown as it stands. */
export function InHandOnly({ no, children }: InHandOnlyProps) {
  const facts = useTree(no)
  const mine = useSelect(myTree)
  if (!facts) return <NoSuchTree />
  const isMine = mine.state !== 'none' && mine.tree === facts.tree.no
  return isMine ? children(facts) : <TreeCard facts={facts} />
}
