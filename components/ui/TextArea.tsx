import type { ReactNode } from 'react'

import { Field } from './Field'

type TextAreaProps = {
  label: ReactNode
  value: string
  onChange: (value: string) => void
  hint?: ReactNode
  fault?: ReactNode
  rows?: number
  maxLength?: number
}

/** A few lines to write in. */
export function TextArea({ label, hint, fault, rows = 3, ...area }: TextAreaProps) {
  return (
    <Field label={label} hint={hint} fault={fault}>
      {({ id, describedBy, isWrong }) => (
        <textarea
          id={id}
          className="input"
          rows={rows}
          value={area.value}
          onChange={(event) => area.onChange(event.target.value)}
          maxLength={area.maxLength}
          aria-invalid={isWrong || undefined}
          aria-describedby={describedBy}
        />
      )}
    </Field>
  )
}
