'use client'

import { useMemo } from 'react'

import { type Look, markOf } from '@/lib/domain/orchard/status'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import { nameOf, useSelect } from '@/lib/hooks'
import { speciesWords } from '@/lib/text/species'
import { useWords } from '../layout/Words'
import type { MapWords } from '../map/map-props'
import { useLeadWords } from './use-lead-words'

/** What a lead's map says of a tree: where it stands, what it is, how it is, who is at it, whether it is picked. */
export function useMapWords(picked: ReadonlySet<number>): MapWords {
  const words = useWords()
  const { leadMap } = useLeadWords()
  const blocks = useSelect((view) => view.ground.blocks)
  const claims = useSelect((view) => view.state?.claims)
  const calls = useSelect((view) => view.state?.calls)
  const names = useSelect((view) => view.names)

  return useMemo(() => {
    const peopleAt = new Map(
      Object.values(claims ?? {}).map(({ tree, people }) => [tree, Object.keys(people)])
    )
    const nameFor = (id: string) => nameOf({ names, unsent: [] }, id) ?? words.claim.somebody
    const callsAt = (tree: Tree) =>
      Object.values(calls ?? {})
        .filter((call) => call.tree === tree.no)
        .map(({ kind, calledBy, subject }) =>
          words.call.of[kind](
            nameFor(calledBy),
            subject === null ? words.call.banner.somebody : nameFor(subject)
          )
        )
    const namesAt = (tree: Tree) => (peopleAt.get(tree.no) ?? []).map(nameFor)
    return {
      label: leadMap.mapLabel,
      zoomIn: words.common.zoomIn,
      zoomOut: words.common.zoomOut,
      notSurveyed: leadMap.notSurveyed,
      tree: (tree: Tree, look: Look | undefined) =>
        [
          words.common.treeSpoken(blocks.get(tree.block)?.name ?? '', tree.row, tree.place),
          speciesWords(words, tree.species).name,
          words.common.status[look ? markOf(look) : 'unpruned'],
          ...callsAt(tree),
          ...namesAt(tree),
          ...(picked.has(tree.no) ? [leadMap.isPicked] : []),
        ].join(', '),
      row: (_: Block, row: number, trees: number) =>
        leadMap.rowAndTrees(row, words.common.trees(trees)),
    }
  }, [words, leadMap, blocks, claims, calls, names, picked])
}
