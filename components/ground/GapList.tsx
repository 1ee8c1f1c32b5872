'use client'

import { useState } from 'react'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { treeTag } from '@/lib/text/tree-name'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'

type GapListProps = { block: Block; trees: readonly Tree[]; onGap: (gap: Tree) => void }

const atOnce = 6

/** The empty places as buttons, for whoever cannot tap a cross. */
export function GapList({ block, trees, onGap }: GapListProps) {
  const { ground } = useLeadWords()
  const [shown, setShown] = useState(atOnce)
  const gaps = trees
    .filter(({ life }) => life === 'gap')
    .toSorted((a, b) => a.row - b.row || a.place - b.place)
  const left = gaps.length - shown
  if (gaps.length === 0) return null
  return (
    <section className="ground-part">
      <h2>{ground.gapsTitle(gaps.length)}</h2>
      <p className="small">{ground.gapsLead}</p>
      <div className="ground-buttons">
        {gaps.slice(0, shown).map((gap) => (
          <Button key={gap.no} onPress={() => onGap(gap)}>
            {ground.fillGap(treeTag({ ...gap, block: block.code }))}
          </Button>
        ))}
        {left > 0 && (
          <Button onPress={() => setShown(shown + 10 * atOnce)}>
            {ground.moreGaps(Math.min(left, 10 * atOnce))}
          </Button>
        )}
      </div>
    </section>
  )
}
