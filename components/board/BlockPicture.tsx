'use client'

import { useMemo } from 'react'

import type { Block } from '@/lib/domain/orchard/types'
import { looksOf, useSelect } from '@/lib/hooks'
import { groupBy } from '@/lib/util/group-by'
import type { MarkName } from '../ui/Mark'
import { boardMark, discsAt, pictureOf } from './block-picture'

type BlockPictureProps = {
  block: Block
  label: string
}

/** Most trees are a few paths together; only what stands out is a mark of its own. */
const asDiscs: readonly MarkName[] = ['unpruned', 'done']

/** A small true map of one block, so that one sees which rows and not only how many. */
export function BlockPicture({ block, label }: BlockPictureProps) {
  const trees = useSelect((view) => view.sheet?.trees)
  const looks = useSelect(looksOf)
  const picture = useMemo(() => pictureOf(block, trees ?? []), [block, trees])
  const { width, height, spacing, dots } = picture
  const byMark = groupBy(dots, ({ no }) => boardMark(looks.get(no)))
  const mark = Math.max(6, Math.min(14, spacing * 0.8))
  const unpruned = discsAt(byMark.get('unpruned') ?? [])

  return (
    <svg className="block-picture" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={label}>
      <path className="ground" d={discsAt(dots)} strokeWidth={spacing * 3} />
      <path className="canopies" d={discsAt(dots)} strokeWidth={spacing * 0.92} />
      <path className="unpruned" d={unpruned} strokeWidth={mark * 0.72} />
      <path className="hollow" d={unpruned} strokeWidth={mark * 0.34} />
      <path className="done" d={discsAt(byMark.get('done') ?? [])} strokeWidth={mark * 0.76} />
      {[...byMark]
        .filter(([name]) => !asDiscs.includes(name))
        .flatMap(([name, marked]) =>
          marked.map(({ no, x, y }) => (
            <use
              key={no}
              href={`#m-${name}`}
              x={x - mark / 2}
              y={y - mark / 2}
              width={mark}
              height={mark}
            />
          ))
        )}
    </svg>
  )
}
