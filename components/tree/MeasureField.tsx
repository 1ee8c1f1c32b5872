'use client'

import { useSelect } from '@/lib/hooks'
import { useFormat } from '../layout/use-format'
import { useWords } from '../layout/Words'
import { TextField } from '../ui/TextField'
import { type Measure, measured, rangeOf, unitOf } from './measure'

type MeasureFieldProps = {
  label: string
  hint?: string | undefined
  measure: Measure
  value: string
  onChange: (typed: string) => void
}

/** A number with its unit; one that cannot be stays typed and is told what may be written. */
export function MeasureField({ label, hint, measure, value, onChange }: MeasureFieldProps) {
  const { ours } = useWords()
  const format = useFormat()
  const units = useSelect((view) => view.state?.orchard.units ?? 'metric')
  const { unit } = unitOf(measure, units)
  const withUnit = (end: number) => `${format.number(end, 1)} ${unit}`
  const [least, most] = rangeOf(measure, units)
  return (
    <TextField
      label={`${label} (${unit})`}
      hint={hint}
      fault={
        measured(measure, value, units) === 'wrong' &&
        ours.wrongMeasure(withUnit(least), withUnit(most))
      }
      value={value}
      onChange={onChange}
      inputMode="decimal"
      maxLength={8}
    />
  )
}
