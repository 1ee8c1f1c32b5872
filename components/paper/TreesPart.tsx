'use client'

import type { Block } from '@/lib/domain/orchard/types'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { PaperTable } from './Page'
import { TreeLineRow } from './TreeLineRow'
import { rowsOnPaper } from './tree-lines'

type TreesPartProps = {
  block: Block
  onlyLeft: boolean
  /** The newest note on each tree; null where it is not known. */
  notes: ReadonlyMap<number, string> | null
}

/** Every tree of one block by row, with room to write who did it and when. */
export function TreesPart({ block, onlyLeft, notes }: TreesPartProps) {
  const { paper: text } = useLeadWords()
  const rows = useSelect((view) => rowsOnPaper(view, block.no, { onlyLeft }))
  const columns = [
    { name: 'tree', head: text.tree },
    { name: 'status', head: text.status },
    { name: 'known', head: text.known },
    { name: 'who', head: text.who },
    { name: 'clock', head: text.begun },
    { name: 'clock-2', head: text.done },
    { name: 'half', head: text.half },
    { name: 'notes', head: text.notes },
  ]
  return (
    <section className="paper-sheet" aria-label={text.treesOf(block.name)}>
      {rows.length === 0 && <p>{text.noTrees}</p>}
      {notes === null && <p>{text.notesUnknown}</p>}
      {rows.length > 0 && (
        <PaperTable title={text.treesOf(block.name)} columns={columns}>
          {rows.map(({ row, lines }) => (
            <tbody key={row}>
              <tr className="row-head">
                <th colSpan={columns.length} scope="rowgroup">
                  {text.rowNumber(row)} <span>{text.ofPages(lines.length)}</span>
                </th>
              </tr>
              {lines.map((line) => (
                <TreeLineRow
                  key={line.tree.no}
                  line={line}
                  block={block}
                  note={notes?.get(line.tree.no) ?? null}
                />
              ))}
            </tbody>
          ))}
        </PaperTable>
      )}
    </section>
  )
}
