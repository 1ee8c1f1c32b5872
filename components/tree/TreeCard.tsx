'use client'

import { claimOnTree } from '@/lib/events/look-ups'
import { missingOfTree } from '@/lib/events/missing'
import { clockOf, myTree, useSelect } from '@/lib/hooks'
import { routes } from '@/lib/routes'
import { TreeHistory } from '../history/TreeHistory'
import { CrewScreen } from '../layout/CrewScreen'
import { useWords } from '../layout/Words'
import { ButtonLink } from '../ui/ButtonLink'
import { Plate } from '../ui/Plate'
import { AskAtTree } from './AskAtTree'
import { DiseaseNote } from './DiseaseNote'
import { MarkedCuts } from './MarkedCuts'
import { MissingList } from './MissingList'
import { MyFlagNote } from './MyFlagNote'
import { TreeFactsList } from './TreeFactsList'
import { TreeNotes } from './TreeNotes'
import { TreeStatus } from './TreeStatus'
import { plateCells } from './tree-words'
import type { TreeFacts } from './use-tree'

/** A tree that is not in my hand: how it stands, who holds it, and what I can do here. */
export function TreeCard({ facts }: { facts: TreeFacts }) {
  const { tree, block } = facts
  const words = useWords()
  const claim = useSelect((view) => view.state && claimOnTree(view.state, tree.no))
  const mine = useSelect(myTree)
  const missing = useSelect((view) => {
    const { state, ground, me } = view
    if (!state || !me) return []
    const all = missingOfTree(state, ground, tree.no, me.personId, clockOf(view))
    return all.filter(({ code }) => code !== 'tree_held')
  })
  return (
    <CrewScreen
      tree={tree.no}
      step={
        claim && mine.state === 'none' ? (
          <AskAtTree call name="join_tree" args={{ claim: claim.id, part: 'helper' }} icon="people">
            {words.tree.joinAsHelper}
          </AskAtTree>
        ) : mine.state !== 'none' && mine.tree !== null ? (
          <ButtonLink kind="call" href={routes.tree(mine.tree)}>
            {words.claim.backToIt}
          </ButtonLink>
        ) : missing.length > 0 ? (
          <ButtonLink kind="call" href={routes.nextTree()}>
            {words.tree.toNextTree}
          </ButtonLink>
        ) : (
          <ButtonLink kind="call" href={`${routes.nextTree()}?tree=${tree.no}`}>
            {words.tree.claimIt}
          </ButtonLink>
        )
      }
    >
      <div className="row wrap">
        <Plate
          label={words.common.treeSpoken(block.name, tree.row, tree.place)}
          cells={plateCells(words, tree, block)}
        />
        <h1 className="beside-plate">{block.name}</h1>
      </div>
      <TreeStatus tree={tree.no} claim={claim} />
      <TreeFactsList facts={facts} why="chosen" />
      {missing.length > 0 && (
        <MissingList label={words.nextTree.noneBecause} missing={missing} tree={tree.no} />
      )}
      <DiseaseNote tree={tree} />
      <MyFlagNote tree={tree.no} />
      <MarkedCuts tree={tree.no} />
      <TreeNotes tree={tree.no} />
      <TreeHistory tree={tree.no} />
      {claim && mine.state === 'none' && (
        <AskAtTree name="join_tree" args={{ claim: claim.id, part: 'learner' }} icon="eye">
          {words.tree.learnHere}
        </AskAtTree>
      )}
    </CrewScreen>
  )
}
