'use client'

import './brush.css'

import { useState } from 'react'

import { brushOfRow, useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import type { TreeFacts } from '../tree/use-tree'
import { Button } from '../ui/Button'
import { BrushRowPanel } from './BrushRowPanel'

/** Beside the map: the brush of the row that the open tree stands in. */
export function TreeBrush({ facts: { tree } }: { facts: TreeFacts }) {
  const { brushRows: text } = useLeadWords()
  const [isOpen, setIsOpen] = useState(false)
  const isOfUse = useSelect((view) => {
    const row = brushOfRow(view, tree.block, tree.row)
    return row !== null && (row.claim !== null || row.open.length + row.closed.length > 0)
  })
  if (!isOfUse) return null
  return (
    <section className="stack">
      <Button expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
        {text.ofRow(tree.row)}
      </Button>
      {isOpen && <BrushRowPanel block={tree.block} row={tree.row} />}
    </section>
  )
}
