'use client'

import type { Tree } from '@/lib/domain/orchard/types'
import { brushOfRow, useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { useNameOf } from '../sync/use-refusal-words'
import { Note } from '../ui/Note'

type HaulersNearProps = {
  tree: Tree
  /** With ladder or saw. */
  overhead: boolean
}

/** People who haul in this row or beside it walk under what is cut. */
export function HaulersNear({ tree, overhead }: HaulersNearProps) {
  const { brush } = useWords()
  const format = useFormat()
  const nameOf = useNameOf()
  const people = useSelect((view) =>
    [tree.row - 1, tree.row, tree.row + 1].flatMap((row) =>
      Object.keys(brushOfRow(view, tree.block, row)?.claim?.people ?? {})
    )
  )
  if (!overhead || people.length === 0) return null
  return (
    <Note tone="stop" icon="warn" role="alert">
      {brush.haulNear(format.list(people.map(nameOf)))}
    </Note>
  )
}
