'use client'

import './brush.css'

import { useState } from 'react'

import { brushRows, useSelect } from '@/lib/hooks'
import { groupBy } from '@/lib/util/group-by'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { List } from '../ui/List'
import { BrushRowItem } from './BrushRowItem'
import { BrushRowPanel } from './BrushRowPanel'

/** Where cut wood lies, who hauls it and where it goes, row by row; what is hauled comes last. */
export function BrushScreen() {
  const { brushRows: text } = useLeadWords()
  const rows = useSelect(brushRows)
  const blocks = useSelect((view) => view.ground.blocks)
  const [chosen, setChosen] = useState<{ block: number; row: number } | null>(null)
  const down = rows.filter(({ open, closed }) => open.length + closed.length > 0)
  const hauled = rows.filter((row) => !down.includes(row))
  const shown = chosen ?? down[0] ?? null

  return (
    <LeadScreen
      here="shift"
      sideLabel={text.whereTo}
      side={
        shown ? (
          <BrushRowPanel key={`${shown.block}:${shown.row}`} block={shown.block} row={shown.row} />
        ) : (
          <p className="brush-row small">{text.pickRow}</p>
        )
      }
    >
      <h1>{text.title}</h1>
      <p className="muted">
        {down.length === 0 ? text.noneDown : text.down(down.length)}
        {hauled.length > 0 && ` · ${text.hauledRows(hauled.length)}`}
      </p>
      {[...groupBy([...down, ...hauled], ({ block }) => block)].map(([block, theirs]) => (
        <section key={block} className="people-group">
          <h2>{blocks.get(block)?.name}</h2>
          <List label={blocks.get(block)?.name ?? ''}>
            {theirs.map((row) => (
              <BrushRowItem key={row.row} row={row} onPress={() => setChosen(row)} />
            ))}
          </List>
        </section>
      ))}
    </LeadScreen>
  )
}
