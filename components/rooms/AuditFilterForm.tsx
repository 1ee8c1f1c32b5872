'use client'

import { useState } from 'react'

import { type AuditFilter, nameOf, useSelect } from '@/lib/hooks'
import { findByText } from '../crew/find-by-text'
import { useLeadWords } from '../layout/Words'
import { useTagOf } from '../sync/use-refusal-words'
import { Button } from '../ui/Button'
import { SelectField } from '../ui/SelectField'
import { TextField } from '../ui/TextField'
import { type AuditGroup, auditGroupNames, auditGroups } from './audit-groups'

type AuditFilterFormProps = {
  filter: AuditFilter
  onChange: (change: Partial<AuditFilter>) => void
  onClear: () => void
}

const any = ''

/** By person, tree, day and what it is about; all of them together. */
export function AuditFilterForm({ filter, onChange, onClear }: AuditFilterFormProps) {
  const { audit: text } = useLeadWords()
  const tagOf = useTagOf()
  const people = useSelect(peopleByName)
  const trees = useSelect((view) => view.sheet?.trees ?? [])
  const blocks = useSelect((view) => view.sheet?.blocks ?? [])
  const [tag, setTag] = useState<string | null>(null)
  const [isNoTree, setIsNoTree] = useState(false)
  const group = auditGroupNames.find((name) => auditGroups[name] === filter.kinds) ?? any
  const isFiltered = Object.values(filter).some((value) => value !== null)

  const write = (typed: string) => {
    setTag(typed)
    const found = typed.trim() === '' ? null : findByText(typed, { trees, blocks })
    const tree = found?.state === 'found' ? found.tree.no : null
    setIsNoTree(found !== null && tree === null)
    if (tree !== filter.tree) onChange({ tree })
  }
  return (
    <div className="audit-filter screen-only">
      <SelectField
        label={text.byKind}
        options={[
          { value: any, label: text.anything },
          ...auditGroupNames.map((name) => ({ value: name, label: text.groups[name] })),
        ]}
        value={group}
        // What a select gives is one of its options.
        onChange={(name) =>
          onChange({ kinds: name === any ? null : auditGroups[name as AuditGroup] })
        }
      />
      <SelectField
        label={text.byPerson}
        options={[{ value: any, label: text.anybody }, ...people]}
        value={filter.about ?? any}
        onChange={(about) => onChange({ about: about === any ? null : about })}
      />
      <TextField
        label={text.byTree}
        hint={text.byTreeHint}
        value={tag ?? (filter.tree === null ? '' : tagOf(filter.tree))}
        onChange={write}
        fault={isNoTree && text.noSuchTree}
        autoComplete="off"
      />
      <TextField
        label={text.byDay}
        type="date"
        value={filter.day ?? ''}
        onChange={(day) => onChange({ day: day === '' ? null : day })}
      />
      {isFiltered && (
        <Button
          onPress={() => {
            setTag(null)
            setIsNoTree(false)
            onClear()
          }}
        >
          {text.clear}
        </Button>
      )}
    </div>
  )
}

/** Also people who left and whose names this device still knows. */
function peopleByName(view: Parameters<typeof nameOf>[0]): { value: string; label: string }[] {
  return Object.keys(view.names)
    .map((id) => ({ value: id, label: nameOf(view, id) ?? '' }))
    .toSorted((a, b) => a.label.localeCompare(b.label))
}
