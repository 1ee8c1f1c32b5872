'use client'

import './labels.css'

import { useMemo, useState } from 'react'

import { rowsOfBlock, treesToLabel } from '@/lib/domain/orchard/label-choice'
import {
  labelsOnSheet,
  onSheets,
  type SheetName,
  sheetNames,
  sheetOf,
} from '@/lib/domain/orchard/label-sheets'
import { useSelect } from '@/lib/hooks'
import { LeadScreen } from '../crew/LeadScreen'
import { useLeadWords } from '../crew/use-lead-words'
import { useOrigin } from '../layout/use-origin'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { Why } from '../ui/Why'
import { AddressNote } from './AddressNote'
import { LabelSheets } from './LabelSheets'
import { readLabels, type Written } from './label-typed'

/** More codes than that keep a browser busy for long, and nobody ties on more in a day. */
const mostLabels = 1_000

/** Chooses which trees get a label and on what sheets; they stand below as they will be printed. */
export function LabelsScreen() {
  const { labels: text } = useLeadWords()
  const origin = useOrigin()
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const trees = useSelect((view) => view.ground.trees)
  const [chosen, setChosen] = useState<number | null>(null)
  const [sheetName, setSheetName] = useState<SheetName>('a4_cards')
  const [typed, setTyped] = useState<Partial<Written>>({})

  const block = chosen ?? blocks[0]?.no ?? 0
  const sheet = sheetOf(sheetName)
  const rows = useMemo(() => rowsOfBlock(trees.values(), block), [trees, block])
  const written = {
    fromRow: String(rows?.from ?? ''),
    toRow: String(rows?.to ?? ''),
    first: '1',
    ...typed,
  }
  const asked = rows && readLabels(written, rows, labelsOnSheet(sheet))
  const isWhole = asked?.state === 'whole'
  const first = isWhole ? asked.first : 1
  const wrong = asked?.state === 'wrong' ? asked.field : null
  const picked = isWhole ? treesToLabel(trees.values(), { block, ...asked }) : []
  const sheets = onSheets(picked, sheet, first).length
  const why = whyNot()

  function whyNot(): string | null {
    if (rows === null) return text.noTrees
    if (wrong === 'rows') return text.rowsRange(rows.from, rows.to)
    if (wrong === 'first') return text.firstRange(labelsOnSheet(sheet))
    return picked.length > mostLabels ? text.tooMany(mostLabels) : null
  }
  const write = (field: keyof Written) => (value: string) => setTyped({ ...typed, [field]: value })

  return (
    <LeadScreen here="shift">
      <div className="label-choose is-read">
        <h1>{text.title}</h1>
        <p>{text.lead}</p>
        <SelectField
          label={text.block}
          value={String(block)}
          options={blocks.map(({ no, name }) => ({ value: String(no), label: name }))}
          onChange={(value) => {
            setChosen(Number(value))
            // Another block has other rows.
            setTyped({ first: written.first })
          }}
        />
        <div className="label-fields">
          <TextField
            label={text.fromRow}
            value={written.fromRow}
            onChange={write('fromRow')}
            inputMode="numeric"
            maxLength={5}
          />
          <TextField
            label={text.toRow}
            value={written.toRow}
            onChange={write('toRow')}
            inputMode="numeric"
            maxLength={5}
          />
        </div>
        <SelectField
          label={text.sheet}
          value={sheetName}
          options={sheetNames.map((name) => ({ value: name, label: text.sheets[name] }))}
          onChange={(value) => setSheetName(value as SheetName)}
        />
        <TextField
          label={text.first}
          hint={text.firstHint}
          value={written.first}
          onChange={write('first')}
          inputMode="numeric"
          maxLength={2}
        />
        {origin !== null && <AddressNote origin={origin} />}
        {why === null ? (
          <>
            <p role="status">{text.count(picked.length, sheets)}</p>
            <Button kind="call" onPress={() => window.print()}>
              {text.print}
            </Button>
          </>
        ) : (
          <>
            <Why id="labels-why">{why}</Why>
            <Button kind="call" state="off" describedBy="labels-why">
              {text.print}
            </Button>
          </>
        )}
        <p className="small">{text.howTo}</p>
      </div>
      {why === null && origin !== null && (
        <LabelSheets trees={picked} sheet={sheet} first={first} origin={origin} />
      )}
    </LeadScreen>
  )
}
