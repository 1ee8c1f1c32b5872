'use client'

import type { ReactNode } from 'react'

import { useLeadWords } from '../crew/use-lead-words'
import { Field } from '../ui/Field'
import { Icon } from '../ui/Icon'

type StepFieldProps = {
  label: string
  unit: string
  value: string
  hint?: ReactNode
  fault?: ReactNode
  onChange: (typed: string) => void
  /** Up and down by one step; what stands there is not a number: null. */
  onStep: (by: 1 | -1) => void
}

/** A number to type, or to step with a gloved thumb. */
export function StepField({ label, unit, value, hint, fault, onChange, onStep }: StepFieldProps) {
  const { ground } = useLeadWords()
  return (
    <Field label={`${label} (${unit})`} hint={hint} fault={fault}>
      {({ id, describedBy, isWrong }) => (
        <div className="step">
          <button type="button" aria-label={ground.less(label)} onClick={() => onStep(-1)}>
            <Icon name="minus" size={20} />
          </button>
          <input
            id={id}
            className="num"
            value={value}
            onChange={(event) => onChange(event.target.value)}
            inputMode="decimal"
            maxLength={8}
            aria-invalid={isWrong || undefined}
            aria-describedby={describedBy}
          />
          <button type="button" aria-label={ground.more(label)} onClick={() => onStep(1)}>
            <Icon name="plus" size={20} />
          </button>
        </div>
      )}
    </Field>
  )
}
