'use client'

import type { Way } from '@/lib/domain/planning/way'
import { groundOnFoot, looksOf, useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { FiveRows } from './FiveRows'
import { fiveRows } from './five-rows'
import type { TreeFacts } from './use-tree'

type RowsMapProps = {
  facts: TreeFacts
  from: number | null
  way: Way
}

/** The map of the way, as the orchard is now. */
export function RowsMap({ facts: { tree, tag }, from, way }: RowsMapProps) {
  const { findTree } = useWords()
  const ground = useSelect(groundOnFoot)
  const looks = useSelect(looksOf)
  const trees = useSelect((view) => view.ground.trees)
  const picture = fiveRows(ground, { from, to: tree.no, way })
  if (!picture) return null
  const rows = picture.rows.map(({ row }) => row)
  return (
    <FiveRows
      picture={picture}
      looks={looks}
      sizeOf={(no) => trees.get(no)?.sizeClass ?? null}
      goal={tree}
      label={findTree.mapLabel(`${Math.min(...rows)}–${Math.max(...rows)}`, tag)}
    />
  )
}
