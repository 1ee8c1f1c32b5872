import type { ReactNode } from 'react'

import { Icon, type IconName } from './Icon'
import { joinClasses } from './join-classes'

/** What a button and a link that looks like one have in common. */
export type ButtonLook = {
  /** `call` is the next step: one on a screen. `stop` is only for stop work. */
  kind?: 'plain' | 'call' | 'stop' | 'ink' | 'quiet' | 'square'
  icon?: IconName | undefined
  /** A second, smaller line. */
  sub?: ReactNode
  low?: boolean
  wide?: boolean
  /** The words. Without them, name the button by `label`. */
  children?: ReactNode
}

/**
 * `off` keeps its words and stays focusable, and names the element that says why.
 * `waiting` is kept and goes out by itself. `wrong` was refused.
 */
export type ButtonState =
  | { state?: 'ready' | 'waiting' | 'wrong' }
  | { state: 'off'; describedBy: string }

/** Held back while the element of this id says why. */
export function offWhen(isOff: boolean, describedBy: string): ButtonState {
  return isOff ? { state: 'off', describedBy } : {}
}

export function buttonClasses(look: ButtonLook, state: ButtonState['state']): string {
  return joinClasses(
    'btn',
    look.kind && look.kind !== 'plain' && `is-${look.kind}`,
    look.low && 'is-low',
    look.wide && 'is-wide',
    state === 'off' && 'is-off',
    state === 'waiting' && 'is-wait',
    state === 'wrong' && 'is-wrong'
  )
}

export function ButtonFace({ kind, icon, sub, children }: ButtonLook) {
  return (
    <>
      {icon && <Icon name={icon} size={kind === 'square' ? 28 : 24} />}
      {children !== undefined && (
        <span>
          {children}
          {sub !== undefined && <small>{sub}</small>}
        </span>
      )}
    </>
  )
}
