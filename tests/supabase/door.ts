/** How the use of a door is written down. */

import type { Name, Scene, Stage } from './scene'

/**
 * anybody: signed in · own: the person's own login · self: that, or a lead · lead, manager: of this
 * orchard · member: of this orchard, whichever person · reads-lead, reads-manager: the same, without
 * naming a person · gone: the login of a person who was removed.
 */
export type Right =
  | 'anybody'
  | 'own'
  | 'self'
  | 'lead'
  | 'manager'
  | 'member'
  | 'reads-lead'
  | 'reads-manager'
  | 'gone'

/** 'ok', 'refused: codes' or 'status code'. */
export type Outcome = string

export type Use = {
  /** Where one door has several: "make_invite device". */
  as?: string
  right: Right
  /** Whose work it is, and whose own login calls; Ann's where nothing is said. */
  whose?: Name
  args: (scene: Scene) => Record<string, unknown>
  /** For those who may; where a stage is not named, the first. */
  outcome: Partial<Record<Stage, Outcome>> & { else: Outcome }
  /** Where a lead who acts for somebody may do more than they. */
  byLead?: Outcome
  /** Ids that are not of an orchard, so that another orchard's are as good. */
  anyIds?: true
}

export const always = { else: 'ok' }
export const inShift = (code = 'shift_not_open') => ({
  else: 'ok',
  none: `refused: ${code}`,
  scheduled: `refused: ${code}`,
  closed: `refused: ${code}`,
})
export const onceThereIs = (missing: string) => ({ else: 'ok', none: missing })
export const onlyPlanned = {
  else: 'ok',
  none: '404 no_such_shift',
  open: 'refused: shift_open',
  stopped: 'refused: shift_open',
  closed: 'refused: shift_closed',
}
export const nothing = () => ({})
