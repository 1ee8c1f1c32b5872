'use client'

import { myTree, useSelect } from '@/lib/hooks'
import { Tag } from '../ui/Tag'

/** The tag of the tree one is at; in outline while nobody has confirmed that it is mine. */
export function TagInHand({ children }: { children: string }) {
  const isAsking = useSelect((view) => myTree(view).state === 'not_confirmed')
  return <Tag state={isAsking ? 'asking' : 'sure'}>{children}</Tag>
}
