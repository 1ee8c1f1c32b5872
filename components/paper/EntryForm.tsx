'use client'

import { type FormEvent, useRef, useState } from 'react'

import { useSelect } from '@/lib/hooks'
import { useLeadWords } from '../crew/use-lead-words'
import { useWords } from '../layout/Words'
import { useNameOf, useTagOf } from '../sync/use-refusal-words'
import { diseaseSigns, hazardSigns } from '../tree/flag-words'
import { Button } from '../ui/Button'
import { Segmented } from '../ui/Segmented'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { emptyTyped, entrySorts, type Field, readEntry, type Typed } from './entry'
import type { useEntries } from './use-entries'

const longestNote = 280

/** One line after the other, by keyboard: Enter adds it, and the cursor is back at the first field. */
export function EntryForm({ entries }: { entries: ReturnType<typeof useEntries> }) {
  const { flag } = useWords()
  const { fromPaper: text } = useLeadWords()
  const nameOf = useNameOf()
  const tagOf = useTagOf()
  const people = useSelect((view) => Object.keys(view.state?.people ?? {}))
  const [faults, setFaults] = useState<readonly Field[]>([])
  const [lastBlock, setLastBlock] = useState<number | null>(null)
  const form = useRef<HTMLFormElement>(null)
  const { typed, date } = entries.sheet
  const trees = useSelect((view) => view.ground.trees)

  const type = (part: Partial<Typed>) => {
    setFaults([])
    entries.type({ ...typed, ...part })
  }
  const field = (
    name: Exclude<Field, 'date' | 'person' | 'sign'>,
    label: string,
    hint?: string
  ) => (
    <TextField
      label={label}
      hint={hint}
      value={typed[name]}
      maxLength={name === 'note' ? longestNote : 30}
      autoComplete="off"
      onChange={(value) => type({ [name]: value })}
      fault={faults.includes(name) && text.faults[name]}
    />
  )
  const select = (name: 'person' | 'sign', label: string, options: [string, string][]) => (
    <SelectField
      label={label}
      options={[['', text.choose], ...options].map(([value = '', label = '']) => ({
        value,
        label,
      }))}
      value={typed[name]}
      onChange={(value) => type({ [name]: value })}
      fault={faults.includes(name) && text.faults[name]}
    />
  )
  const byName = people
    .map((id): [string, string] => [id, nameOf(id)])
    .toSorted(([, a], [, b]) => a.localeCompare(b))
  const signs = [
    ...hazardSigns.map((sign): [string, string] => [
      `arborist ${sign}`,
      text.hazard(flag.hazard[sign]),
    ]),
    ...diseaseSigns.map((sign): [string, string] => [
      `disease ${sign}`,
      text.disease(flag.disease[sign]),
    ]),
  ]

  const add = (event: FormEvent) => {
    event.preventDefault()
    const read = readEntry(typed, entries.readerOf(date, lastBlock))
    if (read.state === 'faulty') return setFaults(read.fields)
    const { args } = read.entered
    const tree = 'tree' in args ? args.tree : null
    // With the whole tag: what "7 14" meant may be another block later.
    const whole = tree === null ? typed : { ...typed, tree: tagOf(tree) }
    if (tree !== null) setLastBlock(trees.get(tree)?.block ?? null)
    const { sort, person, sign } = typed
    void entries.add(whole, {
      ...emptyTyped,
      sort,
      person: sort === 'attendance' ? '' : person,
      sign,
    })
    form.current?.querySelector<HTMLElement>('select, input:not([type=radio])')?.focus()
  }

  return (
    <form ref={form} className="entry-form" onSubmit={add} noValidate>
      <Segmented
        label={text.sort}
        options={entrySorts.map((value) => ({ value, label: text.sorts[value] }))}
        value={typed.sort}
        onChange={(sort) => type({ sort })}
      />
      <div className="entry-fields">
        {select('person', text.person, byName)}
        {typed.sort !== 'attendance' && field('tree', text.tree, text.treeHint)}
        {typed.sort === 'work' && (
          <>
            {field('at', text.at, text.clockHint)}
            {field('begun', text.begun)}
            {field('share', text.share, text.shareHint)}
          </>
        )}
        {typed.sort === 'flag' && (
          <>
            {select('sign', text.sign, signs)}
            {field('at', text.seenAt, text.clockHint)}
          </>
        )}
        {typed.sort === 'attendance' && (
          <>
            {field('arrived', text.arrived, text.clockHint)}
            {field('breakFrom', text.breakFrom)}
            {field('breakTo', text.breakTo)}
            {field('left', text.left, text.attendanceHint)}
          </>
        )}
        {typed.sort !== 'attendance' && field('note', text.note, text.noteHint)}
      </div>
      <Button type="submit">{text.add}</Button>
    </form>
  )
}
