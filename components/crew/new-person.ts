/** Somebody whom a lead adds. */

import type { ArgsOf } from '@/lib/events/commands'

export type NewPerson = {
  name: string
  role: 'volunteer' | 'visitor'
  ageBand: 'adult' | 'minor'
  guardian: string | null
  phone: string
}

export const emptyPerson: NewPerson = {
  name: '',
  role: 'volunteer',
  ageBand: 'adult',
  guardian: null,
  phone: '',
}

export function personLacks({ name, ageBand, guardian }: NewPerson): ('name' | 'guardian')[] {
  const lacks: ('name' | 'guardian')[] = []
  if (name.trim() === '') lacks.push('name')
  if (ageBand === 'minor' && guardian === null) lacks.push('guardian')
  return lacks
}

export function personArgs(person: NewPerson): ArgsOf<'add_person'> {
  const phone = person.phone.trim()
  return {
    name: person.name.trim(),
    role: person.role,
    ageBand: person.ageBand,
    guardian: person.ageBand === 'minor' ? person.guardian : null,
    phone: phone === '' ? null : phone,
  }
}
