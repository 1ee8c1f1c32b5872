'use client'

import { useId, useMemo, useState } from 'react'

import { type Numbering, renumbered } from '@/lib/domain/orchard/renumber'
import type { Block, Tree } from '@/lib/domain/orchard/types'
import { useSend } from '@/lib/hooks'
import { treeTag } from '@/lib/text/tree-name'
import { AskedNote } from '../crew/AskedNote'
import { useAsk } from '../crew/use-ask'
import { useLeadWords } from '../crew/use-lead-words'
import { Button } from '../ui/Button'
import { CheckRow } from '../ui/CheckRow'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { numberTyped } from './typed'

const asItIs: Numbering = {
  firstRow: 1,
  firstPlace: 1,
  rowsBack: false,
  placesBack: false,
  serpentine: false,
  closeUp: true,
}
const switches = ['rowsBack', 'placesBack', 'serpentine', 'closeUp'] as const
const starts = [
  ['firstRow', 'firstRowNo'],
  ['firstPlace', 'firstPlaceNo'],
] as const

type RenumberProps = { block: Block; trees: readonly Tree[]; onDone: (words: string) => void }

/** Rows and places anew, with what becomes of the first and the last tree. */
export function Renumber({ block, trees, onDone }: RenumberProps) {
  const { ground } = useLeadWords()
  const send = useSend()
  const whyId = useId()
  const { asked, isAsking, ask } = useAsk()
  const [numbering, setNumbering] = useState(asItIs)
  const [typed, setTyped] = useState({ firstRow: '1', firstPlace: '1' })
  const known = useMemo(() => new Map(trees.map((tree) => [tree.no, tree])), [trees])
  const numbered = useMemo(() => renumbered(trees, numbering), [trees, numbering])
  const changed = numbered.filter(({ no, row, place }) => {
    const tree = known.get(no)
    return tree?.row !== row || tree.place !== place
  })
  const isTooHigh = numbered.some(({ row, place }) => row > 9999 || place > 9999)
  const lacks = isTooHigh
    ? ground.renumberTooHigh
    : changed.length === 0
      ? ground.renumberSame
      : null
  const shown = [changed[0], changed.at(-1)].filter((one) => one !== undefined)
  const tag = (at: { row: number; place: number }) => treeTag({ ...at, block: block.code })
  const save = () => {
    const numbers = changed.map(({ no, row, place }): [number, number, number] => [no, row, place])
    void ask(send('number_trees', { block: block.no, numbers }), () => onDone(ground.renumbered))
  }
  return (
    <div className="ground-part">
      <p className="small">{ground.renumberNote}</p>
      <div className="ground-pair">
        {starts.map(([name, word]) => (
          <TextField
            key={name}
            label={ground[word]}
            value={typed[name]}
            onChange={(next) => {
              setTyped({ ...typed, [name]: next })
              setNumbering({ ...numbering, [name]: numberTyped(next) ?? numbering[name] })
            }}
            fault={numberTyped(typed[name]) === null && ground.placeFault}
            inputMode="numeric"
            maxLength={4}
          />
        ))}
      </div>
      {switches.map((name) => (
        <CheckRow
          key={name}
          checked={numbering[name]}
          onChange={(on) => setNumbering({ ...numbering, [name]: on })}
        >
          {ground[name]}
        </CheckRow>
      ))}
      <ul className="num" aria-live="polite">
        {shown.map(({ no, ...at }) => (
          <li key={no}>{ground.renumberSee(tag(known.get(no) ?? at), tag(at))}</li>
        ))}
      </ul>
      <AskedNote asked={asked} />
      {lacks !== null && <Why id={whyId}>{lacks}</Why>}
      {lacks !== null ? (
        <Button kind="call" state="off" describedBy={whyId}>
          {ground.renumberDo(changed.length)}
        </Button>
      ) : (
        <Button kind="call" state={isAsking ? 'waiting' : 'ready'} onPress={save}>
          {ground.renumberDo(changed.length)}
        </Button>
      )}
    </div>
  )
}
