import { Icon, type IconName } from './Icon'
import { joinClasses } from './join-classes'

export type NetState = 'sent' | 'sending' | 'offline' | 'kept' | 'needsYou'

type NetBadgeProps = {
  state: NetState
  /** The words; while all is sent only the ear gets them. */
  children: string
  /** The list of what is not sent yet. */
  href?: string | undefined
}

const looks: Record<NetState, { icon: IconName; className: string }> = {
  sent: { icon: 'bars', className: '' },
  sending: { icon: 'send', className: 'is-sending' },
  offline: { icon: 'nobars', className: 'is-off' },
  kept: { icon: 'kept', className: 'is-off' },
  needsYou: { icon: 'cross', className: 'is-wrong' },
}

/** The signal at the top of a phone: bars only, until there is something to say. */
export function NetBadge({ state, children, href }: NetBadgeProps) {
  const { icon, className } = looks[state]
  const face = (
    <>
      <Icon name={icon} size={18} />
      <span role="status" className={state === 'sent' ? 'sr' : undefined}>
        {children}
      </span>
    </>
  )
  const classes = joinClasses('net', className)
  return href === undefined ? (
    <span className={classes}>{face}</span>
  ) : (
    <a className={classes} href={href}>
      {face}
    </a>
  )
}
