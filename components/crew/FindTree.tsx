'use client'

import { useEffect, useRef, useState } from 'react'

import { useDraft, useSelect } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { Dialog } from '../ui/Dialog'
import { TextField } from '../ui/TextField'
import { type FoundByText, findByText } from './find-by-text'
import { useLeadWords } from './use-lead-words'

type FindTreeProps = {
  open: boolean
  onFound: (tree: number) => void
  onClose: () => void
}

/** A tree by what one hears over the radio: block, row and place, in whatever spelling. */
export function FindTree({ open, onFound, onClose }: FindTreeProps) {
  const { common } = useWords()
  const { mapTools } = useLeadWords()
  const trees = useSelect((view) => view.sheet?.trees ?? [])
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const draft = useDraft('find-tree', '')
  const [found, setFound] = useState<FoundByText | null>(null)
  const form = useRef<HTMLFormElement>(null)
  const faultOf = useFault()
  // The dialog would begin at its cross; whoever opens this wants to type.
  useEffect(() => {
    if (open) form.current?.querySelector('input')?.select()
  }, [open])

  const show = (tree: number) => {
    setFound(null)
    onFound(tree)
    onClose()
  }
  const look = () => {
    const now = findByText(draft.value, { trees, blocks })
    setFound(now)
    if (now.state === 'found') show(now.tree.no)
  }
  return (
    <Dialog
      kind="sheet"
      open={open}
      title={mapTools.find}
      onClose={onClose}
      closeLabel={common.close}
    >
      <form
        ref={form}
        className="stack"
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          look()
        }}
      >
        <TextField
          label={mapTools.findLabel}
          hint={mapTools.findHint}
          type="search"
          autoComplete="off"
          maxLength={60}
          value={draft.value}
          onChange={(text) => {
            setFound(null)
            draft.write(text)
          }}
          fault={found && faultOf(found)}
        />
        {found?.state === 'in_which_block' ? (
          <fieldset className="field">
            <legend className="lab">{mapTools.inWhichBlock}</legend>
            <div className="tree-buttons">
              {found.trees.map((tree) => {
                const block = blocks.find(({ no }) => no === tree.block)
                return (
                  <Button key={tree.no} onPress={() => show(tree.no)}>
                    {`${block?.name ?? ''} ${treeTag({ ...tree, block: block?.code ?? '' })}`}
                  </Button>
                )
              })}
            </div>
          </fieldset>
        ) : (
          <Button type="submit" wide icon="right">
            {mapTools.findGo}
          </Button>
        )}
      </form>
    </Dialog>
  )
}

function useFault(): (found: FoundByText) => string | null {
  const { findTree } = useWords()
  const { mapTools } = useLeadWords()
  return (found) => {
    switch (found.state) {
      case 'found':
      case 'in_which_block':
        return null
      case 'not_read':
        return mapTools.notRead
      case 'no_number':
        return mapTools.noNumber(found.no)
      case 'none_there':
        return mapTools.noneThere(found.row, found.place)
      case 'no_row':
        return findTree.writeRow(found.first, found.last)
      case 'no_place':
        return findTree.writeTree(found.row, found.first, found.last)
      case 'no_tree':
        return mapTools.noneThere(found.row, found.place)
    }
  }
}
