import type { ReactNode } from 'react'

import { Icon, type IconName } from '../ui/Icon'
import { joinClasses } from '../ui/join-classes'

type BannerProps = {
  /** `stop` only for a stop in force. */
  tone?: 'plain' | 'ink' | 'call' | 'stop'
  icon?: IconName
  action?: ReactNode
  children: ReactNode
}

/** What everybody on this screen must know, across its top. A stop is spoken at once. */
export function Banner({ tone = 'plain', icon = 'info', action, children }: BannerProps) {
  return (
    <div
      className={joinClasses('banner', tone !== 'plain' && `is-${tone}`)}
      role={tone === 'stop' ? 'alert' : 'status'}
    >
      <Icon name={icon} />
      <span className="grow">{children}</span>
      {action}
    </div>
  )
}

export function Banners({ children }: { children: ReactNode }) {
  return <div className="banners">{children}</div>
}
