import type { ReactNode } from 'react'

import { Icon, type IconName } from './Icon'
import { joinClasses } from './join-classes'

type WhyProps = {
  /** The button held back names this id as its description. */
  id?: string | undefined
  icon?: IconName | undefined
  /** `wrong` is for a refusal: red words, and the button below offers the way on. */
  tone?: 'plain' | 'wrong'
  children: ReactNode
}

/** The reason above a button. A refusal is spoken at once. */
export function Why({ id, icon, tone = 'plain', children }: WhyProps) {
  const isWrong = tone === 'wrong'
  return (
    <p
      id={id}
      className={joinClasses('why', isWrong && 'is-wrong')}
      role={isWrong ? 'alert' : undefined}
    >
      <Icon name={icon ?? (isWrong ? 'cross' : 'info')} size={20} />
      <span>{children}</span>
    </p>
  )
}
