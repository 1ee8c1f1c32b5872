/** What is written down about somebody, and what of it a lead has changed. */

import type { ArgsOf } from '@/lib/events/commands'
import type { Role } from '@/lib/events/state'

export type KnownPerson = {
  name: string
  role: Role
  ageBand: 'adult' | 'minor'
  guardian: string | null
  /** Empty: none. */
  phone: string
}

/** Only what is another now: what another lead changed meanwhile stays. */
export function changesOf(
  before: KnownPerson,
  after: KnownPerson
): Omit<ArgsOf<'change_person'>, 'subject'> {
  const name = after.name.trim()
  const phone = after.phone.trim()
  const guardian = after.ageBand === 'minor' ? after.guardian : null
  return {
    name: name === before.name ? null : name,
    role: after.role === before.role ? null : after.role,
    ageBand: after.ageBand === before.ageBand ? null : after.ageBand,
    guardian: guardian === before.guardian ? null : guardian,
    phone: phone === before.phone ? null : phone,
  }
}

export function personLacks({
  name,
  role,
  ageBand,
  guardian,
}: KnownPerson): ('name' | 'guardian' | 'role')[] {
  const isMinor = ageBand === 'minor'
  const lacks: ('name' | 'guardian' | 'role')[] = []
  if (name.trim() === '') lacks.push('name')
  if (isMinor && guardian === null) lacks.push('guardian')
  if (isMinor && (role === 'lead' || role === 'manager')) lacks.push('role')
  return lacks
}
