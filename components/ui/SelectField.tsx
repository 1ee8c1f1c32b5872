import type { ReactNode } from 'react'

import { Field } from './Field'

type SelectFieldProps = {
  label: ReactNode
  options: readonly { value: string; label: string }[]
  value: string
  onChange: (value: string) => void
  hint?: ReactNode
  fault?: ReactNode
}

/** One of a long list, by the device's own picker. */
export function SelectField({ label, options, value, onChange, hint, fault }: SelectFieldProps) {
  return (
    <Field label={label} hint={hint} fault={fault}>
      {({ id, describedBy, isWrong }) => (
        <select
          id={id}
          className="input"
          value={value}
          onChange={(event) => onChange(event.target.value)}
          aria-invalid={isWrong || undefined}
          aria-describedby={describedBy}
        >
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  )
}
