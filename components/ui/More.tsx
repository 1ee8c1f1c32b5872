import type { ReactNode } from 'react'

import { Icon } from './Icon'

type MoreProps = {
  /** What is behind it. */
  title: ReactNode
  children: ReactNode
}

/** More for who wants it: opens in place, without script. */
export function More({ title, children }: MoreProps) {
  return (
    <details className="more">
      <summary>
        <Icon name="down" size={18} />
        {title}
      </summary>
      <div className="stack">{children}</div>
    </details>
  )
}
