'use client'

import { useState } from 'react'

import type { Tree } from '@/lib/domain/orchard/types'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { TextField } from '../ui/TextField'
import { type Range, treesInRange } from './picking'
import { numberTyped } from './typed'
import type { PickingNow } from './use-picking'

const fields = ['rowFrom', 'rowTo', 'placeFrom', 'placeTo'] as const
const nothingTyped: Record<keyof Range, string> = {
  rowFrom: '',
  rowTo: '',
  placeFrom: '',
  placeTo: '',
}

type PickTreesProps = { picking: PickingNow; trees: readonly Tree[] }

/** How many are picked, and picking by numbers: for keys, for ears, and for whole rows. */
export function PickTrees({ picking, trees }: PickTreesProps) {
  const { ground } = useLeadWords()
  const [typed, setTyped] = useState(nothingTyped)
  const [isOpen, setIsOpen] = useState(false)
  const range: Range = {
    rowFrom: numberTyped(typed.rowFrom),
    rowTo: numberTyped(typed.rowTo),
    placeFrom: numberTyped(typed.placeFrom),
    placeTo: numberTyped(typed.placeTo),
  }
  const count = treesInRange(trees, range).length
  return (
    <section className="ground-part">
      <h2>{ground.pickTitle}</h2>
      <p role="status" className={picking.all.length === 0 ? 'small' : 'num'}>
        {picking.all.length === 0 ? ground.pickNone : ground.picked(picking.all.length)}
      </p>
      <div className="ground-buttons">
        <Button low expanded={isOpen} onPress={() => setIsOpen(!isOpen)}>
          {ground.pickRange}
        </Button>
        {picking.all.length < trees.length && (
          <Button low onPress={picking.everything}>
            {ground.pickAll}
          </Button>
        )}
        {picking.all.length > 0 && (
          <Button low onPress={picking.nothing}>
            {ground.dropAll}
          </Button>
        )}
      </div>
      {isOpen && (
        <>
          <div className="ground-pair">
            {fields.map((name) => (
              <TextField
                key={name}
                low
                label={ground[name]}
                value={typed[name]}
                onChange={(next) => setTyped({ ...typed, [name]: next })}
                inputMode="numeric"
                maxLength={4}
              />
            ))}
          </div>
          {count === 0 && <p className="small">{ground.noneInRange}</p>}
          <Button onPress={() => picking.range(range)}>{ground.pickRangeDo}</Button>
        </>
      )}
    </section>
  )
}
