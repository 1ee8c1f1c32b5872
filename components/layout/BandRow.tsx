import type { ReactNode } from 'react'

import { Face } from '../ui/Face'

type BandRowProps = {
  name: string
  /** "Teo: is this limb dead?" */
  title: ReactNode
  /** The tag, how long ago, photos. */
  note?: ReactNode
  action?: ReactNode
}

/** One person in the ink band who needs somebody. */
export function BandRow({ name, title, note, action }: BandRowProps) {
  return (
    <div>
      <Face name={name} />
      <div className="grow">
        <b>{title}</b>
        {note !== undefined && <span className="small">{note}</span>}
      </div>
      {action}
    </div>
  )
}
