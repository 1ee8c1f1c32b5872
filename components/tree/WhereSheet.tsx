'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import { useLocation } from '../where/use-location'
import { WhereAmI } from '../where/WhereAmI'
import { BlockChoice } from './BlockChoice'
import { findByTag, treeAtEnd } from './find-by-tag'

type WhereSheetProps = {
  from: number | null
  /** The tree at that end of the row stands for where one is. */
  onHere: (tree: number) => void
  onClose: () => void
}

/** Where I am: found by this device, or said by the end of a row. */
export function WhereSheet({ from, onHere, onClose }: WhereSheetProps) {
  const { common, findTree, where } = useWords()
  const { location, look } = useLocation()
  const trees = useSelect((view) => view.sheet?.trees ?? [])
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const last = useSelect((view) => (from === null ? undefined : view.ground.trees.get(from)))
  const [blockNo, setBlock] = useState(last?.block ?? blocks[0]?.no ?? 0)
  const [row, setRow] = useState(String(last?.row ?? 1))
  const [end, setEnd] = useState<'tagged' | 'far'>('tagged')
  const [fault, setFault] = useState<string | null>(null)

  function stand(): void {
    const block = blocks.find(({ no }) => no === blockNo)
    const tree = block && treeAtEnd(trees, { block, row: Number(row), end })
    if (tree) {
      onHere(tree.no)
      return
    }
    const told = findByTag(trees, { block: blockNo, row: '', place: '' })
    if (told.state === 'no_row') setFault(findTree.writeRow(told.first, told.last))
  }

  return (
    <Dialog
      open
      kind="sheet"
      title={findTree.whereTitle}
      closeLabel={common.close}
      onClose={onClose}
    >
      <div className="stack">
        {location.state === 'off' ? (
          <Button icon="meet" wide onPress={look}>
            {where.find}
          </Button>
        ) : (
          <WhereAmI location={location} hasPlan onAgain={look} onTree={onHere} />
        )}
        <BlockChoice value={blockNo} onChange={setBlock} />
        <TextField
          label={findTree.row}
          inputMode="numeric"
          autoComplete="off"
          maxLength={5}
          value={row}
          onChange={setRow}
          fault={fault}
        />
        <Segmented
          label={findTree.end}
          options={[
            { value: 'tagged', label: findTree.taggedEnd },
            { value: 'far', label: findTree.farEnd },
          ]}
          value={end}
          onChange={setEnd}
        />
        <Button kind="call" wide onPress={stand}>
          {findTree.iAmHere}
        </Button>
      </div>
    </Dialog>
  )
}
