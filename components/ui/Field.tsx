import { type ReactNode, useId } from 'react'

import { Icon } from './Icon'

type FieldProps = {
  label: ReactNode
  /** A line under the field. */
  hint?: ReactNode
  /** What to write instead. The field keeps what was typed. */
  fault?: ReactNode
  children: (ids: { id: string; describedBy: string | undefined; isWrong: boolean }) => ReactNode
}

/** A label, a control, and below it a hint or what to write instead. */
export function Field({ label, hint, fault, children }: FieldProps) {
  const id = useId()
  const hintId = `${id}-hint`
  const faultId = `${id}-fault`
  const describedBy = [hint && hintId, fault && faultId].filter(Boolean).join(' ') || undefined
  return (
    <div className="field">
      <label className="lab" htmlFor={id}>
        {label}
      </label>
      {children({ id, describedBy, isWrong: Boolean(fault) })}
      {fault && (
        <p className="fault" id={faultId} role="alert">
          <Icon name="cross" size={18} />
          {fault}
        </p>
      )}
      {hint && (
        <p className="small hint" id={hintId}>
          {hint}
        </p>
      )}
    </div>
  )
}
