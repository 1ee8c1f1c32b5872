'use client'

import { type LabelSheet, onSheets, papers, sheetMargins } from '@/lib/domain/orchard/label-sheets'
import type { Tree } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { useLeadWords } from '../crew/use-lead-words'
import { TreeLabel } from './TreeLabel'

type LabelSheetsProps = {
  trees: readonly Tree[]
  sheet: LabelSheet
  /** The label, from 1, at which the first sheet begins. */
  first: number
  origin: string
}

/** The sheets as they come out of the printer; on the screen as wide as there is room. */
export function LabelSheets({ trees, sheet, first, origin }: LabelSheetsProps) {
  const { labels: text } = useLeadWords()
  const ground = useSelect((view) => view.ground)
  const cultivars = useSelect((view) => view.sheet?.cultivars ?? [])
  return (
    <section className="label-sheets" aria-label={text.preview}>
      {onSheets(trees, sheet, first).map((places, at) => (
        <section
          key={places.find((tree) => tree !== null)?.no}
          className={`label-sheet is-${sheet.paper}`}
          style={gridOf(sheet)}
          aria-label={text.sheetNo(at + 1)}
        >
          {places.map((tree, place) => {
            const block = tree && ground.blocks.get(tree.block)
            // biome-ignore lint/suspicious/noArrayIndexKey: a used label has nothing but its place
            if (!tree || !block) return <div key={`used-${place}`} className="label-used" />
            const cultivar = cultivars.find((one) => one.no === tree.cultivar) ?? null
            const tag = treeTag({ ...tree, block: block.code })
            return (
              <TreeLabel
                key={tree.no}
                facts={{ tree, block, cultivar, tag }}
                sheet={sheet}
                origin={origin}
              />
            )
          })}
        </section>
      ))}
    </section>
  )
}

function gridOf(sheet: LabelSheet) {
  const { leftMm, topMm } = sheetMargins(sheet)
  const { widthMm, heightMm } = papers[sheet.paper]
  const mm = (length: number) => `calc(${length} * var(--mm))`
  return {
    width: mm(widthMm),
    // Browsers count a page in whole pixels: a hair too high, and an empty one follows each sheet.
    height: mm(heightMm - 0.4),
    padding: `${mm(topMm)} ${mm(leftMm)}`,
    columnGap: mm(sheet.gapMm),
    gridTemplateColumns: `repeat(${sheet.columns}, ${mm(sheet.widthMm)})`,
    gridAutoRows: mm(sheet.heightMm),
  }
}
