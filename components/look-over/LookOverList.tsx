'use client'

import type { Proposal } from '@/lib/domain/planning/look-over'
import { useSelect } from '@/lib/hooks'
import { groupBy } from '@/lib/util/group-by'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { Count } from '../ui/Count'
import { List, ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import type { TreeToLookOver } from './use-look-over'

type LookOverListProps = {
  trees: readonly TreeToLookOver[]
  proposals: readonly Proposal[]
  onTree: (tree: number) => void
}

/** Everything that waits, by who pruned it and then along the rows. */
export function LookOverList({ trees, proposals, onTree }: LookOverListProps) {
  const { leadMap, lookOver } = useLeadWords()
  const nameOf = useNameOf()
  const format = useFormat()
  const tagOf = useTagOf()
  const ground = useSelect((view) => view.ground)
  const proposed = new Set(proposals.map(({ tree }) => tree))
  const placed = trees.flatMap((one) => {
    const tree = ground.trees.get(one.tree)
    return tree ? [{ ...one, ...tree }] : []
  })
  const byPeople = groupBy(placed, ({ people }) => format.list(people.map(nameOf)))

  return (
    <div className="look-over-list">
      {[...byPeople]
        .toSorted(([a], [b]) => a.localeCompare(b))
        .map(([names, theirs]) => (
          <section key={names}>
            <h2>
              {names} <Count>{theirs.length}</Count>
            </h2>
            <List label={names}>
              {theirs
                .toSorted((a, b) => a.block - b.block || a.row - b.row || a.place - b.place)
                .map(({ tree, block, row, at }) => (
                  <ListItem
                    key={tree}
                    title={leadMap.rowOf(ground.blocks.get(block)?.code ?? '', row)}
                    note={[
                      format.clock(new Date(at)),
                      proposed.has(tree) ? lookOver.proposed : null,
                    ]
                      .filter(Boolean)
                      .join(', ')}
                    end={<Tag>{tagOf(tree)}</Tag>}
                    onPress={() => onTree(tree)}
                  />
                ))}
            </List>
          </section>
        ))}
    </div>
  )
}
