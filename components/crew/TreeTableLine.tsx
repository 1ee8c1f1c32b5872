'use client'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { markNames } from '../map/mark-name'
import { useTagOf } from '../sync/use-refusal-words'
import { kindWords } from '../tree/tree-words'
import { Icon } from '../ui/Icon'
import { joinClasses } from '../ui/join-classes'
import { Mark } from '../ui/Mark'
import { Tag } from '../ui/Tag'
import type { TreeLine } from './tree-table'

type TreeTableLineProps = {
  line: TreeLine
  /** Counted from 0 over all lines, also those that are not in the page. */
  number: number
  isHere: boolean
  isPicked: boolean
  isOpen: boolean
  onPress: () => void
}

/** One tree: its tag, what it is, how it is, who is at it. Keys are heard by the table. */
export function TreeTableLine({
  line: { tree, mark, who, isDimmed },
  number,
  isHere,
  isPicked,
  isOpen,
  onPress,
}: TreeTableLineProps) {
  const words = useWords()
  const tagOf = useTagOf()
  const cultivar = useSelect(
    (view) => view.sheet?.cultivars.find(({ no }) => no === tree.cultivar) ?? null
  )
  return (
    <tr
      className={joinClasses(isDimmed && 'is-dim', isOpen && 'is-open', isPicked && 'is-picked')}
      // The head of the table is line 1.
      aria-rowindex={number + 2}
      aria-selected={isPicked}
      tabIndex={isHere ? 0 : -1}
      onClick={onPress}
    >
      <th scope="row">
        <span className="row">
          <Tag>{tagOf(tree.no)}</Tag>
          {isPicked && <Icon name="check" size={18} />}
        </span>
      </th>
      <td>{kindWords(words, tree, cultivar)}</td>
      <td>
        <span className="row">
          <Mark name={markNames[mark]} size={18} />
          {words.common.status[mark]}
        </span>
      </td>
      <td>{who}</td>
    </tr>
  )
}
