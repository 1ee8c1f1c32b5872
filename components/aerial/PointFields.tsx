'use client'

import { useLeadWords } from '../layout/Words'
import { TextField } from '../ui/TextField'
import type { PointRead, PointTyped } from './aerial-typed'

type PointFieldsProps = {
  no: number
  typed: PointTyped
  read: PointRead
  onTyped: (typed: PointTyped) => void
}

/** One of the three trees: where it is in the picture, and its tag. */
export function PointFields({ no, typed, read, onTyped }: PointFieldsProps) {
  const { aerial: text } = useLeadWords()
  const faultAt = (field: keyof PointTyped) =>
    read.state === 'wrong' && read.field === field && faults[read.why]
  const faults = { share: text.writeShare, no_tree: text.noTree, no_place: text.noPlace }
  return (
    <fieldset className="field">
      <legend className="lab">{text.point(no)}</legend>
      <div className="aerial-fields">
        <TextField
          label={text.tag}
          value={typed.tag}
          onChange={(tag) => onTyped({ ...typed, tag })}
          fault={faultAt('tag')}
          autoComplete="off"
          maxLength={60}
        />
        <TextField
          label={text.fromLeft}
          value={typed.left}
          onChange={(left) => onTyped({ ...typed, left })}
          fault={faultAt('left')}
          inputMode="decimal"
          maxLength={6}
        />
        <TextField
          label={text.fromTop}
          value={typed.top}
          onChange={(top) => onTyped({ ...typed, top })}
          fault={faultAt('top')}
          inputMode="decimal"
          maxLength={6}
        />
      </div>
    </fieldset>
  )
}
