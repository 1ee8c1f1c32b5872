import type { HTMLInputAutoCompleteAttribute, ReactNode } from 'react'

import { Field } from './Field'
import { joinClasses } from './join-classes'

type TextFieldProps = {
  label: ReactNode
  value: string
  onChange: (value: string) => void
  hint?: ReactNode
  fault?: ReactNode
  type?: 'text' | 'search' | 'tel' | 'time' | 'date' | 'datetime-local'
  inputMode?: 'text' | 'numeric' | 'decimal' | 'tel'
  autoComplete?: HTMLInputAutoCompleteAttribute
  maxLength?: number
  required?: boolean
  low?: boolean
}

/** One line to write in. */
export function TextField({ label, hint, fault, ...input }: TextFieldProps) {
  return (
    <Field label={label} hint={hint} fault={fault}>
      {({ id, describedBy, isWrong }) => (
        <input
          id={id}
          className={joinClasses('input', input.low && 'is-low')}
          type={input.type ?? 'text'}
          value={input.value}
          onChange={(event) => input.onChange(event.target.value)}
          inputMode={input.inputMode}
          autoComplete={input.autoComplete}
          maxLength={input.maxLength}
          aria-required={input.required || undefined}
          aria-invalid={isWrong || undefined}
          aria-describedby={describedBy}
        />
      )}
    </Field>
  )
}
