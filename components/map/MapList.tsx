'use client'

import { useState } from 'react'

import { type Block, stands, type Tree } from '@/lib/domain/orchard/types'
import { rowKey } from '@/lib/map/scene'
import { groupBy } from '@/lib/util/group-by'

import { List, ListItem } from '../ui/List'
import { Mark } from '../ui/Mark'
import type { MapProps } from './map-props'
import { markNameOf } from './mark-name'

type MapListProps = Pick<MapProps, 'trees' | 'blocks' | 'looks' | 'words' | 'onTap'>

/** The map for reading: block by block and row by row, one row open at a time. */
export function MapList({ trees, blocks, looks, words, onTap }: MapListProps) {
  const [openRow, setOpenRow] = useState<string | null>(null)
  const rows = groupBy(trees.filter(stands), rowKey)

  return blocks.map((block) => (
    <section key={block.no} aria-label={block.name}>
      <h3>{block.name}</h3>
      {[...rows].map(([key, row]) => (
        <Row
          key={key}
          {...{ block, row, looks, words, onTap }}
          isOpen={key === openRow}
          onToggle={() => setOpenRow(key === openRow ? null : key)}
        />
      ))}
    </section>
  ))
}

type RowProps = Pick<MapListProps, 'looks' | 'words' | 'onTap'> & {
  block: Block
  row: readonly Tree[]
  isOpen: boolean
  onToggle: () => void
}

/** Ten thousand buttons are too many for a page, so a row's trees come when it is opened. */
function Row({ block, row, looks, words, onTap, isOpen, onToggle }: RowProps) {
  const [first] = row
  if (first?.block !== block.no) return null
  return (
    <>
      <button type="button" className="btn map-row" aria-expanded={isOpen} onClick={onToggle}>
        {words.row(block, first.row, row.length)}
      </button>
      {isOpen && (
        <List label={words.row(block, first.row, row.length)}>
          {row.map((tree) => (
            <ListItem
              key={tree.no}
              lead={<Mark name={markNameOf(looks.get(tree.no))} />}
              title={words.tree(tree, looks.get(tree.no))}
              onPress={() => onTap(tree)}
            />
          ))}
        </List>
      )}
    </>
  )
}
