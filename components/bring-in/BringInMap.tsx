'use client'

import { useMemo, useState } from 'react'

import type { Inventory } from '@/lib/domain/orchard/inventory-placed'
import type { TreeLooks } from '@/lib/domain/orchard/status'
import type { Tree } from '@/lib/domain/orchard/types'
import { speciesWords } from '@/lib/text/species'
import { treeTag } from '@/lib/text/tree-name'
import { PagedMap } from '@/lib/util/paged-map'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { OrchardMap } from '../map/OrchardMap'
import { Panel } from '../ui/Panel'
import type { Reading } from './reading'

const noLooks: TreeLooks = PagedMap.empty()

type BringInMapProps = { reading: Reading; existing: Inventory; ticked: ReadonlySet<number> }

/** What would stand where: trees that are here already are faint, those that change are picked out. */
export function BringInMap({ reading, existing, ticked }: BringInMapProps) {
  const words = useWords()
  const { bringIn: text, leadMap } = useLeadWords()
  const [tapped, setTapped] = useState<Tree | null>(null)
  const { trees, blocks, dimmed, codes } = useMemo(() => {
    const all = [...existing.blocks, ...reading.blocks]
    return {
      trees: [...existing.trees, ...reading.trees],
      blocks: all,
      dimmed: new Set(existing.trees.map(({ no }) => no).filter((no) => !ticked.has(no))),
      codes: new Map(all.map(({ no, code }) => [no, code])),
    }
  }, [existing, reading, ticked])
  const said = (tree: Tree) => {
    const tag = treeTag({ ...tree, block: codes.get(tree.block) ?? '' })
    return `${tag}: ${speciesWords(words, tree.species).name}`
  }
  return (
    <Panel title={text.map}>
      <div className="bring-in-map">
        <OrchardMap
          {...{ trees, blocks, dimmed }}
          looks={noLooks}
          selected={ticked}
          words={{
            label: text.mapLabel,
            zoomIn: words.common.zoomIn,
            zoomOut: words.common.zoomOut,
            notSurveyed: leadMap.notSurveyed,
            tree: said,
            row: (_, row, count) => leadMap.rowAndTrees(row, words.common.trees(count)),
          }}
          onTap={setTapped}
        />
      </div>
      <p className="small" role="status">
        {tapped && said(tapped)}
      </p>
    </Panel>
  )
}
