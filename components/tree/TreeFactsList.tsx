'use client'

import { nameOf, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Facts } from '../ui/Facts'
import { sickAround } from './sick-around'
import type { Suggestion } from './suggestions'
import { ageWords, kindWords } from './tree-words'
import { type TreeFacts, useThisYear } from './use-tree'

type TreeFactsListProps = {
  facts: TreeFacts
  why: Suggestion['why']
}

/** Why this tree, what it is, and what order of work keeps the others healthy. */
export function TreeFactsList({ facts: { tree, cultivar }, why }: TreeFactsListProps) {
  const words = useWords()
  const format = useFormat()
  const thisYear = useThisYear()
  const share = useSelect((view) => view.state?.work[tree.no]?.share ?? null)
  const isBegun = useSelect((view) => view.state?.work[tree.no]?.state === 'begun')
  const sick = useSelect((view) => sickAround(view, tree))
  const dealer = useSelect((view) => {
    const id = view.state?.dealtBy[tree.no]
    return id === undefined ? null : nameOf(view, id)
  })
  const { nextTree, findTree } = words
  const reason = {
    dealt: dealer === null ? nextTree.dealt : nextTree.dealtBy(dealer),
    same_row: nextTree.sameRow,
    nearest: nextTree.nearest,
    chosen: null,
  }[why]
  const age = ageWords(words, tree, thisYear)
  const kind = kindWords(words, tree, cultivar)

  return (
    <Facts
      facts={[
        ...(reason ? [{ icon: 'person', text: <b>{reason}</b> } as const] : []),
        { icon: 'wheel', text: age ? `${kind}, ${age}` : kind },
        ...(isBegun
          ? [
              {
                mark: 'inProgress',
                text:
                  share === null
                    ? nextTree.begun
                    : `${nextTree.begun}: ${format.share(share / 100)}`,
              } as const,
            ]
          : []),
        ...(tree.asksSaw ? [{ icon: 'saw', text: nextTree.needsTwo } as const] : []),
        ...(sick.isThis ? [{ mark: 'disease', text: nextTree.diseaseThere } as const] : []),
        ...(!sick.isThis && sick.inRow
          ? [
              {
                icon: 'drop',
                text: findTree.healthyFirst(sick.inRow.trees, sick.inRow.row),
              } as const,
            ]
          : []),
      ]}
    />
  )
}
