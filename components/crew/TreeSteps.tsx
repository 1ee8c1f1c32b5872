'use client'

import { useState } from 'react'

import { useSelect, useSend } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import type { TreeFacts } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { ButtonLink } from '../ui/ButtonLink'
import { AskedNote } from './AskedNote'
import { MarkBigCuts } from './MarkBigCuts'
import { useAsk } from './use-ask'
import { useLeadWords } from './use-lead-words'

/** What a lead does at the tree itself. */
export function TreeSteps({ facts: { tree, tag } }: { facts: TreeFacts }) {
  const { leadMap, mapTools } = useLeadWords()
  const send = useSend()
  const { asked, ask } = useAsk()
  const isMarked = useSelect((view) => view.state?.marked[tree.no] !== undefined)
  const [isMarking, setIsMarking] = useState(false)
  return (
    <div className="tree-buttons">
      <AskedNote asked={asked} />
      <Button icon="edit" onPress={() => setIsMarking(true)}>
        {isMarked ? mapTools.markAgain : leadMap.mark}
      </Button>
      {isMarked && (
        <Button onPress={() => ask(send('unmark_big_cuts', { tree: tree.no }))}>
          {mapTools.unmark}
        </Button>
      )}
      <ButtonLink icon="flag" href={routes.flagTree(tree.no)}>
        {leadMap.flag}
      </ButtonLink>
      <MarkBigCuts open={isMarking} tree={tree.no} tag={tag} onClose={() => setIsMarking(false)} />
    </div>
  )
}
