'use client'

import { useWords } from '../layout/Words'
import { SelectField } from '../ui/SelectField'
import type { LineTyped } from './danger-draft'
import { MeasureField } from './MeasureField'
import { measures } from './measure'

/** What lines are built for, from 50 kV on; a lead who knows of another takes the next higher. */
const voltages = ['50', '69', '115', '138', '230', '345', '500', '765']

type LineQuestionProps = { line: LineTyped; onChange: (line: LineTyped) => void }

/** A lead who knows the line says which and how far; whatever is left out leaves it the arborist's. */
export function LineQuestion({ line, onChange }: LineQuestionProps) {
  const { ours } = useWords()
  const text = ours.line
  const far = (field: 'toTree' | 'ladder' | 'tool' | 'branch') => (
    <MeasureField
      label={text[field]}
      measure={field === 'toTree' ? measures.toLineM : measures.reachM}
      value={line[field]}
      onChange={(typed) => onChange({ ...line, [field]: typed })}
    />
  )
  return (
    <section className="stack" aria-label={text.title}>
      <p className="label">{text.title}</p>
      <p className="small">{text.hint}</p>
      <SelectField
        label={text.kv}
        value={line.kv}
        onChange={(kv) => onChange({ ...line, kv })}
        options={[
          { value: '', label: text.kvNotKnown },
          ...voltages.map((kv) => ({ value: kv, label: text.kvUpTo(kv) })),
        ]}
      />
      {far('toTree')}
      {far('ladder')}
      {far('tool')}
      {far('branch')}
    </section>
  )
}
