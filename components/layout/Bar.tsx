import type { ReactNode } from 'react'

import { Logo } from '../ui/Logo'

type BarProps = {
  title: ReactNode
  sub?: ReactNode
  /** `<Tabs>` */
  tabs?: ReactNode
  /** The clock, the wind, stop work: at the right, away from the next step. */
  end?: ReactNode
}

/** The line at the top of a tablet or laptop. */
export function Bar({ title, sub, tabs, end }: BarProps) {
  return (
    <header className="bar">
      <Logo size={34} />
      <div className="shift">
        <b>{title}</b>
        {sub !== undefined && <span className="tiny">{sub}</span>}
      </div>
      {tabs}
      {end !== undefined && <div className="end">{end}</div>}
    </header>
  )
}
