/** A briefing that changed while somebody is at a tree, so gravely that they come down and sign first. */

import { briefedOf, openShift } from '@/lib/events/look-ups'

import { myTree } from './me'
import type { View } from './view'

export type ComeDown = {
  shiftId: string
  version: number
  /** What they signed before; what is new is told against it. */
  signedVersion: number
  /** Null where they are at a whole row. */
  tree: number | null
}

/** Of who is at a tree only: everybody else signs before their next one, and has the banner until then. */
export function comeDownToSign(view: View): ComeDown | null {
  const { state, me } = view
  const shift = state && openShift(state)
  const mine = myTree(view)
  if (!shift || !me || mine.state === 'none') return null
  const { signedVersion } = briefedOf(state, me.personId)
  if (signedVersion >= shift.comeDownVersion) return null
  return { shiftId: shift.id, version: shift.briefingVersion, signedVersion, tree: mine.tree }
}
