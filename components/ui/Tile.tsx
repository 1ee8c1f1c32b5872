import type { ReactNode } from 'react'

import type { Choice } from './choice'
import { Icon } from './Icon'
import { joinClasses } from './join-classes'

type TileProps = Choice & {
  /** A drawing or a mark. */
  art?: ReactNode
  /** The drawing stands beside the words instead of above them. */
  beside?: boolean
  tone?: 'call' | 'done'
  children: ReactNode
}

/** An answer with a picture: a real radio or box under the whole tile. */
export function Tile({ type, name, checked, onChange, art, beside, tone, children }: TileProps) {
  return (
    <label
      className={joinClasses(
        'tile',
        beside && 'is-beside',
        checked && 'is-on',
        tone === 'done' && 'is-done'
      )}
    >
      <input
        className="sr"
        type={type}
        name={name}
        checked={checked}
        onChange={(event) => onChange(event.target.checked)}
      />
      {art}
      <span>{children}</span>
      {checked && !beside && (
        <span className="tick">
          <Icon name="check" size={20} />
        </span>
      )}
    </label>
  )
}
