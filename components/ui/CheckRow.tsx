import type { ReactNode } from 'react'

import { Icon } from './Icon'
import { joinClasses } from './join-classes'

type CheckRowProps = {
  checked: boolean
  onChange: (checked: boolean) => void
  /** This box is the next step: it holds the apricot while the big button waits. */
  next?: boolean
  hint?: ReactNode
  children: ReactNode
}

/** A whole row to tick. */
export function CheckRow({ checked, onChange, next = false, hint, children }: CheckRowProps) {
  return (
    <label className="check">
      <input
        className="sr"
        type="checkbox"
        checked={checked}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span className={joinClasses('box', checked && 'is-on', next && !checked && 'is-next')}>
        {checked && <Icon name="check" size={22} />}
      </span>
      <span className="grow">
        {children}
        {hint !== undefined && <span className="tiny">{hint}</span>}
      </span>
    </label>
  )
}
