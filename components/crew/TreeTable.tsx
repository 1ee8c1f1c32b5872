'use client'

import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'

import { Segmented } from '../ui/Segmented'
import { TreeTableLine } from './TreeTableLine'
import { lineAfter, pickedBetween, type Sort, sorts } from './tree-table'
import type { DealingNow } from './use-dealing'
import { useLeadWords } from './use-lead-words'
import { useTreeLines } from './use-tree-lines'
import { useWindow } from './use-window'

type TreeTableProps = {
  dimmed: ReadonlySet<number>
  dealing: DealingNow
  /** The tree beside the table. */
  open: number | null
  onTree: (tree: number) => void
  onOpen: (tree: number) => void
}

/**
 * The same trees as on the map, for keys and ears: one line has the focus, space picks it, shift picks from
 * one to another. Only the lines that are seen are in the page, so ten thousand cost as little as fifty.
 */
export function TreeTable({ dimmed, dealing, open, onTree, onOpen }: TreeTableProps) {
  const { mapTools } = useLeadWords()
  const hintId = useId()
  const [sort, setSort] = useState<Sort>('tree')
  const lines = useTreeLines(dimmed, sort)
  const { scroller, first, last, linePx, comeInto } = useWindow(lines.length)
  const [at, setAt] = useState(0)
  /** Where a range begins, and what was picked before it. */
  const range = useRef<{ from: number; before: readonly number[] } | null>(null)
  const body = useRef<HTMLTableSectionElement>(null)
  const hasKeys = useRef(false)
  const here = Math.min(at, Math.max(0, lines.length - 1))

  const isSeen = here >= first && here < last

  // biome-ignore lint/correctness/useExhaustiveDependencies: the line may come into the page after the key
  useEffect(() => {
    if (!hasKeys.current || !isSeen) return
    body.current?.querySelector<HTMLElement>('[tabindex="0"]')?.focus({ preventScroll: true })
  }, [here, isSeen])

  function walk(to: number, withShift: boolean): void {
    if (withShift) {
      range.current ??= { from: here, before: dealing.trees }
      dealing.pickTrees(pickedBetween(lines, range.current.from, to, range.current.before))
    } else range.current = null
    setAt(to)
    comeInto(to)
  }

  function onKeyDown(event: KeyboardEvent): void {
    const line = lines[here]
    const page = Math.max(1, last - first - 16)
    const to = lineAfter(event.key, { at: here, count: lines.length, page })
    if (to !== null) walk(to, event.shiftKey)
    else if (event.key === ' ' && line) {
      range.current = null
      dealing.pickTree(line.tree.no)
    } else if (event.key === 'Enter' && line) onOpen(line.tree.no)
    else return
    event.preventDefault()
  }

  return (
    <div className="tree-table">
      <Segmented
        label={mapTools.sortBy}
        low
        options={sorts.map((one) => ({ value: one, label: mapTools.columns[one] }))}
        value={sort}
        onChange={setSort}
      />
      <p className="sr" id={hintId}>
        {mapTools.tableHint}
      </p>
      <div className="tree-table-lines" ref={scroller}>
        <table
          // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a table of which keys walk the lines
          role="grid"
          aria-label={mapTools.table}
          aria-describedby={hintId}
          aria-rowcount={lines.length + 1}
          aria-multiselectable
          // The lines that are not in the page keep their room.
          style={{ marginTop: first * linePx, marginBottom: (lines.length - last) * linePx }}
        >
          <thead>
            <tr aria-rowindex={1}>
              <th scope="col" aria-sort={sort === 'tree' ? 'ascending' : 'none'}>
                {mapTools.columns.tree}
              </th>
              <th scope="col">{mapTools.columns.kind}</th>
              <th scope="col" aria-sort={sort === 'status' ? 'ascending' : 'none'}>
                {mapTools.columns.status}
              </th>
              <th scope="col" aria-sort={sort === 'who' ? 'ascending' : 'none'}>
                {mapTools.columns.who}
              </th>
            </tr>
          </thead>
          <tbody
            ref={body}
            onKeyDown={onKeyDown}
            onFocus={() => {
              hasKeys.current = true
            }}
            onBlur={({ currentTarget, relatedTarget }) => {
              // Focus that goes nowhere was lost with its line; it comes back with the next one.
              if (relatedTarget && !currentTarget.contains(relatedTarget)) hasKeys.current = false
            }}
          >
            {lines.slice(first, last).map((line, index) => (
              <TreeTableLine
                key={line.tree.no}
                line={line}
                number={first + index}
                isHere={index === (isSeen ? here - first : 0)}
                isPicked={dealing.picked.has(line.tree.no)}
                isOpen={line.tree.no === open}
                onPress={() => {
                  setAt(first + index)
                  range.current = null
                  onTree(line.tree.no)
                }}
              />
            ))}
          </tbody>
        </table>
      </div>
    </div>
  )
}
