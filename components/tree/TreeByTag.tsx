'use client'

import { useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { useWords } from '../layout/Words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { BlockChoice } from './BlockChoice'
import { type FoundByTag, findByTag } from './find-by-tag'

type TreeByTagProps = {
  /** A tree nearby: its block and row are likely the same. */
  near: number | null
  onFound: (tree: number) => void
}

/** A tree by what its tag says. */
export function TreeByTag({ near, onFound }: TreeByTagProps) {
  const { findTree } = useWords()
  const trees = useSelect((view) => view.sheet?.trees ?? [])
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const nearby = useSelect((view) => (near === null ? undefined : view.ground.trees.get(near)))
  const [block, setBlock] = useState(nearby?.block ?? blocks[0]?.no ?? 0)
  const [row, setRow] = useState(String(nearby?.row ?? ''))
  const [place, setPlace] = useState('')
  const [found, setFound] = useState<FoundByTag | null>(null)
  const code = blocks.find(({ no }) => no === block)?.code ?? ''

  function look(): void {
    const now = findByTag(trees, { block, row, place })
    setFound(now)
    if (now.state === 'found') onFound(now.tree.no)
  }

  return (
    <form
      className="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        look()
      }}
    >
      <BlockChoice value={block} onChange={setBlock} />
      <div className="row is-top">
        <div className="grow">
          <TextField
            label={findTree.row}
            inputMode="numeric"
            autoComplete="off"
            maxLength={5}
            value={row}
            onChange={setRow}
            fault={found?.state === 'no_row' && findTree.writeRow(found.first, found.last)}
          />
        </div>
        <div className="grow">
          <TextField
            label={findTree.treeInRow}
            inputMode="numeric"
            autoComplete="off"
            maxLength={5}
            value={place}
            onChange={setPlace}
            fault={faultOfPlace()}
          />
        </div>
      </div>
      <Button type="submit" wide icon="right">
        {findTree.goes}
      </Button>
    </form>
  )

  function faultOfPlace(): string | null {
    if (found?.state === 'no_place') return findTree.writeTree(found.row, found.first, found.last)
    if (found?.state === 'no_tree')
      return findTree.noTreeThere(treeTag({ block: code, row: found.row, place: found.place }))
    return null
  }
}
