'use client'

import { useState } from 'react'

import { routes } from '@/lib/routes'
import type { TreeFacts } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { MarkBigCuts } from './MarkBigCuts'
import { useLeadWords } from './use-lead-words'

/** What a lead does at the tree itself. */
export function TreeSteps({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const { leadMap } = useLeadWords()
  const [isMarking, setIsMarking] = useState(false)
  return (
    <div className="tree-buttons">
      <Button icon="edit" onPress={() => setIsMarking(true)}>
        {leadMap.mark}
      </Button>
      <ButtonLink icon="flag" href={routes.flagTree(tree.no)}>
        {leadMap.flag}
      </ButtonLink>
      <MarkBigCuts open={isMarking} tree={tree.no} tag={tag} onClose={() => setIsMarking(false)} />
    </div>
  )
}
