'use client'

import { useMemo } from 'react'

import type { Block, Tree } from '@/lib/domain/orchard/types'
import { looksOf, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useMapWords } from '../crew/use-map-words'
import { OrchardMap } from '../map/OrchardMap'
import { Button } from '../ui/Button'
import type { PickingNow } from './use-picking'

type BlockTreesProps = {
  block: Block
  trees: readonly Tree[]
  picking: PickingNow
  onGap: (gap: Tree) => void
}

/** The block alone on the map; a tap picks a tree, a row's number its row, a line what is inside; an empty place is filled. */
export function BlockTrees({ block, trees, picking, onGap }: BlockTreesProps) {
  const { ground, mapTools } = useLeadWords()
  const looks = useSelect(looksOf)
  const mapWords = useMapWords(picking.asSet)
  const words = useMemo(
    () => ({ ...mapWords, label: ground.mapOf(block.name) }),
    [mapWords, ground, block.name]
  )
  const blocks = useMemo(() => [block], [block])
  return (
    <div className="ground-map">
      <OrchardMap
        trees={trees}
        blocks={blocks}
        looks={looks}
        selected={picking.asSet}
        words={words}
        drawing={picking.isDrawing ? { corners: picking.corners, onStroke: picking.stroke } : null}
        hasGaps
        onTap={(tree) => (tree.life === 'gap' ? onGap(tree) : picking.tree(tree.no))}
        onTapRow={(_, row) => picking.row(row)}
      />
      <div className="ground-map-tools">
        {picking.isDrawing ? (
          <>
            <Button icon="check" onPress={picking.endDrawing}>
              {ground.endDrawing}
            </Button>
            {picking.corners.length > 0 && (
              <Button icon="undo" onPress={picking.undoStroke}>
                {ground.undoStroke}
              </Button>
            )}
          </>
        ) : (
          <Button icon="lasso" onPress={picking.draw}>
            {mapTools.draw}
          </Button>
        )}
      </div>
    </div>
  )
}
