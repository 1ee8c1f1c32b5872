'use client'

import { useEffect, useRef } from 'react'
import { TreeBrush } from '../brush/TreeBrush'
import { TreeHistory } from '../history/TreeHistory'
import { useWords } from '../layout/Words'
import { TreeLookedOver } from '../look-over/TreeLookedOver'
import { MarkedCuts } from '../tree/MarkedCuts'
import { plateCells } from '../tree/tree-words'
import { useTree } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { Plate } from '../ui/Plate'
import { TreeDealing } from './TreeDealing'
import { TreeFlags } from './TreeFlags'
import { TreeNotes } from './TreeNotes'
import { TreePeople } from './TreePeople'
import { TreeStanding } from './TreeStanding'
import { TreeSteps } from './TreeSteps'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'

type TreePanelProps = {
  no: number
  dealing: DealingNow
  onClose: () => void
}

/** One tree beside the map: what it is, how it is, who has it, and what a lead can do about it. */
export function TreePanel({ no, dealing, onClose }: TreePanelProps) {
  const words = useWords()
  const { leadMap } = useLeadWords()
  const facts = useTree(no)
  const panel = useRef<HTMLDivElement>(null)
  // Whoever reads with ears or keys is brought to what they opened.
  useEffect(() => {
    panel.current?.focus({ preventScroll: true })
  }, [])
  if (!facts) return null

  const { tree, block } = facts
  return (
    <div className="tree-panel" ref={panel} tabIndex={-1}>
      <div className="tree-panel-head">
        <h2>
          <Plate
            small
            cells={plateCells(words, tree, block)}
            label={words.common.treeSpoken(block.name, tree.row, tree.place)}
          />
        </h2>
        <Button kind="quiet" icon="cross" label={leadMap.closeTree} onPress={onClose} />
      </div>
      <TreeStanding facts={facts} />
      <TreePeople facts={facts} />
      <TreeFlags tree={no} />
      <TreeDealing facts={facts} dealing={dealing} />
      <TreeLookedOver facts={facts} />
      <MarkedCuts tree={no} />
      <TreeBrush facts={facts} />
      <TreeSteps facts={facts} />
      <TreeNotes tree={no} />
      <TreeHistory key={no} tree={no} />
    </div>
  )
}
