import type { ReactNode } from 'react'

import { Icon, type IconName } from './Icon'
import { joinClasses } from './join-classes'
import { Mark, type MarkName } from './Mark'

export type NoteTone = 'plain' | 'stop' | 'sick' | 'arb' | 'done' | 'work' | 'call'

type NoteProps = {
  tone?: NoteTone
  icon?: IconName
  mark?: MarkName
  /** The half sentence in bold that everything else explains. */
  lead?: ReactNode
  /** `status` and `alert` are spoken when they appear. */
  role?: 'status' | 'alert'
  children?: ReactNode
}

/** One thing worth knowing, on a pale wash. */
export function Note({ tone = 'plain', icon, mark, lead, role, children }: NoteProps) {
  return (
    <div className={joinClasses('note', tone !== 'plain' && `is-${tone}`)} role={role}>
      {mark ? <Mark name={mark} size={22} /> : <Icon name={icon ?? 'info'} size={22} />}
      <div>
        {lead !== undefined && <b className={isLabel(lead) ? 'own-line' : undefined}>{lead}</b>}
        {lead !== undefined && children !== undefined && ' '}
        {children}
      </div>
    </div>
  )
}

/** Not a sentence: what follows would read as one with it. */
function isLabel(lead: ReactNode): boolean {
  return typeof lead === 'string' && !/[.,;:!?…]$/.test(lead)
}
