'use client'

import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Dialog } from '../ui/Dialog'
import { Icon } from '../ui/Icon'
import { List, ListItem } from '../ui/List'
import { Tag } from '../ui/Tag'
import { otherTrees, type Suggestion } from './suggestions'
import { TreeByTag } from './TreeByTag'

type OtherTreeSheetProps = {
  from: number | null
  /** The one that was suggested. */
  not: number | null
  onTake: (tree: number) => void
  onClose: () => void
}

const offered = 3

/** A few others to take, and any tree by its tag. */
export function OtherTreeSheet({ from, not, onTake, onClose }: OtherTreeSheetProps) {
  const { common, findTree, nextTree } = useWords()
  const format = useFormat()
  const tagOf = useTagOf()
  const others = useSelect((view) => otherTrees(view, from, { not, count: offered }))
  const why: Record<Suggestion['why'], string> = {
    dealt: nextTree.dealt,
    same_row: nextTree.sameRow,
    nearest: nextTree.nearest,
    chosen: '',
  }
  return (
    <Dialog
      open
      kind="sheet"
      title={findTree.otherTitle}
      closeLabel={common.close}
      onClose={onClose}
    >
      {others.length > 0 && (
        <List label={findTree.otherTitle}>
          {others.map(({ tree, why: reason, walkM }) => (
            <ListItem
              key={tree}
              lead={<Tag>{tagOf(tree)}</Tag>}
              title={why[reason]}
              note={walkM === null ? undefined : format.distance(walkM)}
              end={<Icon name="right" />}
              onPress={() => onTake(tree)}
            />
          ))}
        </List>
      )}
      <h3 className="label">{findTree.byTag}</h3>
      <TreeByTag near={from ?? not} onFound={onTake} />
    </Dialog>
  )
}
