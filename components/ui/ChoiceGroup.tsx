import type { ReactNode } from 'react'

type ChoiceGroupProps = {
  label: ReactNode
  hideLabel?: boolean
  /** How the choices stand: picks in lines, tiles in two columns, checks as rows. */
  as: 'picks' | 'tiles' | 'checks'
  children: ReactNode
}

/** The question that a handful of radios or boxes answer together. */
export function ChoiceGroup({ label, hideLabel = false, as, children }: ChoiceGroupProps) {
  return (
    <fieldset className="field">
      <legend className={hideLabel ? 'sr' : 'lab'}>{label}</legend>
      <div className={as === 'checks' ? undefined : as}>{children}</div>
    </fieldset>
  )
}
