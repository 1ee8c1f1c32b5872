'use client'

import { columns, type LengthUnit, unitsOf } from '@/lib/domain/orchard/inventory-columns'
import { rematched, unitFor } from '@/lib/domain/orchard/match-columns'
import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { Note } from '../ui/Note'
import { Panel } from '../ui/Panel'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import type { Reading } from './reading'
import type { SaidDraft } from './use-bring-in'

type ColumnListProps = { reading: Reading; said: SaidDraft }

/** Each column of the file with some of what stands in it, and what it is taken for. */
export function ColumnList({ reading: { table, matching }, said }: ColumnListProps) {
  const { bringIn: text } = useLeadWords()
  const has = (column: string) => matching.some((match) => match.column === column)
  return (
    <Panel title={text.columnsTitle}>
      <div className="stack">
        <p>{text.columnsLead}</p>
        <ul className="columns">
          {table.heads.map((head, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a file may have two columns of one name
            <li key={index}>
              <ColumnChoice {...{ head, index, table, matching, said }} />
            </li>
          ))}
        </ul>
        {!has('place') && <Note>{text.noPlaces}</Note>}
        {!has('block') && (
          <>
            <Note>{text.noBlocks}</Note>
            <TextField
              label={text.onlyBlock}
              value={said.value.onlyBlock}
              onChange={(onlyBlock) => said.write({ ...said.value, onlyBlock })}
              maxLength={4}
            />
          </>
        )}
      </div>
    </Panel>
  )
}

type ColumnChoiceProps = Pick<Reading, 'table' | 'matching'> & {
  head: string
  index: number
  said: SaidDraft
}

function ColumnChoice({ head, index, table, matching, said }: ColumnChoiceProps) {
  const { bringIn: text } = useLeadWords()
  const orchardUnits = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const match = matching[index] ?? { column: null, unit: null }
  const values = table.records.slice(0, 500).map(({ fields }) => fields[index] ?? '')
  const samples = [...new Set(values.filter(Boolean))].slice(0, 3)
  const units = match.column ? unitsOf[match.column] : undefined

  const take = (name: string) => {
    const column = columns.find((one) => one === name) ?? null
    const unit = column && unitFor(column, head, values, orchardUnits)
    said.write({ ...said.value, matching: rematched(matching, index, { column, unit }) })
  }
  const measure = (unit: string) => {
    const next = rematched(matching, index, { ...match, unit: unit as LengthUnit })
    said.write({ ...said.value, matching: next })
  }
  return (
    <>
      <SelectField
        label={head || text.noName(index + 1)}
        hint={samples.length === 0 ? text.allEmpty : text.such(samples.join(' · ').slice(0, 80))}
        options={[
          { value: '', label: text.leftOut },
          ...columns.map((column) => ({ value: column, label: text.columns[column] })),
        ]}
        value={match.column ?? ''}
        onChange={take}
      />
      {units && (
        <SelectField
          label={text.unit}
          options={units.map((unit) => ({ value: unit, label: text.units[unit] }))}
          value={match.unit ?? 'cm'}
          onChange={measure}
        />
      )}
    </>
  )
}
