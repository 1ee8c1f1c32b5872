'use client'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { Panel } from '../ui/Panel'
import { Segmented } from '../ui/Segmented'
import { TextField } from '../ui/TextField'
import type { TypedPlace } from './bring-in-draft'
import type { NewBlock } from './reading'
import { limitsOf, type PlaceField, placeValue } from './typed-place'
import type { SaidDraft } from './use-bring-in'

type NewBlocksProps = { blocks: readonly NewBlock[]; said: SaidDraft }

/** The blocks that the file brings: the letters on their plates, and where those are that have no positions. */
export function NewBlocks({ blocks, said }: NewBlocksProps) {
  const { bringIn: text } = useLeadWords()
  return (
    <Panel title={text.blocksTitle}>
      <ul className="new-blocks">
        {blocks.map((block) => (
          <li key={block.label} className="stack">
            <BlockFields block={block} said={said} />
          </li>
        ))}
      </ul>
    </Panel>
  )
}

function BlockFields({ block: known, said }: { block: NewBlock; said: SaidDraft }) {
  const { common } = useWords()
  const { bringIn: text } = useLeadWords()
  const { label, block, trees, hasPositions, typed, isCodeWrong } = known
  const place = (change: Partial<TypedPlace>) => {
    const places = { ...said.value.places, [label]: { ...typed, ...change } }
    said.write({ ...said.value, places })
  }
  const rename = (code: string) =>
    said.write({ ...said.value, codes: { ...said.value.codes, [label]: code.trim() } })
  return (
    <>
      <h3>
        {label}, {common.trees(trees)}
      </h3>
      <TextField
        label={text.code}
        fault={isCodeWrong && text.writeCode}
        value={said.value.codes[label] ?? block.code}
        onChange={rename}
        maxLength={4}
      />
      {hasPositions ? (
        <p className="small">{text.positions}</p>
      ) : (
        <>
          <Segmented
            label={text.where}
            options={[
              { value: 'grid', label: text.whereGrid },
              { value: 'first', label: text.whereFirst },
            ]}
            value={typed.isFromFirstTree ? 'first' : 'grid'}
            onChange={(where) => place({ isFromFirstTree: where === 'first' })}
          />
          {typed.isFromFirstTree ? (
            <PlaceFields typed={typed} onChange={place} />
          ) : (
            <p className="small">{text.gridNote}</p>
          )}
        </>
      )}
    </>
  )
}

type PlaceFieldsProps = { typed: TypedPlace; onChange: (change: Partial<TypedPlace>) => void }

function PlaceFields({ typed, onChange }: PlaceFieldsProps) {
  const { bringIn: text } = useLeadWords()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const format = useFormat()
  const unit = units === 'us' ? 'ft' : 'm'
  const labels: Record<PlaceField, string> = {
    lat: text.firstLat,
    lon: text.firstLon,
    bearing: text.bearing,
    rowSpacing: text.rowSpacing(unit),
    treeSpacing: text.treeSpacing(unit),
  }
  // Object.keys knows no names.
  const fields = Object.keys(labels) as PlaceField[]
  return (
    <div className="fields">
      {fields.map((field) => {
        const [least, most] = limitsOf(field, units)
        const isWrong = typed[field] !== '' && placeValue(field, typed[field], units) === null
        return (
          <TextField
            key={field}
            label={labels[field]}
            hint={field === 'bearing' && text.bearingHint}
            fault={isWrong && text.writeWithin(format.number(least, 1), format.number(most, 1))}
            value={typed[field]}
            onChange={(value) => onChange({ [field]: value })}
            // Phones in some lands have no minus on their pad of numbers.
            inputMode={field === 'lat' || field === 'lon' ? 'text' : 'decimal'}
            maxLength={20}
          />
        )
      })}
    </div>
  )
}
