import type { ReactNode } from 'react'

import type { Choice } from './choice'
import { Icon } from './Icon'
import { joinClasses } from './join-classes'

type PickProps = Choice & {
  low?: boolean
  /** A face in front instead of the tick. */
  face?: ReactNode
  children: ReactNode
}

/** One of several short answers, in a pill. */
export function Pick({ type, name, checked, onChange, low, face, children }: PickProps) {
  return (
    <label className={joinClasses('pick', checked && 'is-on', low && 'is-low')}>
      <input
        className="sr"
        type={type}
        name={name}
        checked={checked}
        onChange={(event) => onChange(event.target.checked)}
      />
      {face ?? (checked && <Icon name="check" size={18} />)}
      <span>{children}</span>
    </label>
  )
}
