/** Who works in the demo orchard. All invented, like the orchard. */

export const demoOrchard = {
  name: 'Ashmerrow',
  timeZone: 'America/Chicago',
  language: 'en',
  units: 'metric',
} as const

export type DemoPerson = {
  name: string
  role: 'manager' | 'lead' | 'volunteer' | 'visitor'
  ageBand: 'adult' | 'minor'
  /** The name of the adult who answers for a minor. */
  guardian?: string
  language: 'en' | 'es'
  skills: readonly ('hand_saw' | 'ladder' | 'prunes_alone')[]
  hasPhone: boolean
  /** When they came to the orchard; who was there last winter only has left since. */
  since: 'last_winter' | 'last_winter_only' | 'today'
}

export const demoPeople: readonly DemoPerson[] = [
  adult('Maren Oduya', 'manager', 'en', ['hand_saw', 'ladder', 'prunes_alone']),
  adult('Iker Salvaterra', 'lead', 'es', ['hand_saw', 'ladder', 'prunes_alone']),
  adult('Wilma Thackeray', 'lead', 'en', ['hand_saw', 'ladder', 'prunes_alone']),
  adult('Tobin Achterberg', 'volunteer', 'en', ['hand_saw', 'prunes_alone']),
  adult('Rosaura Quiñones', 'volunteer', 'es', ['hand_saw', 'ladder', 'prunes_alone']),
  adult('Pim Delacroix', 'volunteer', 'en', ['prunes_alone']),
  adult('Nadia Brightwater', 'volunteer', 'en', ['hand_saw', 'prunes_alone']),
  adult('Eliseo Montalbán', 'volunteer', 'es', ['prunes_alone']),
  adult('Greta Holloway', 'volunteer', 'en', []),
  { ...adult('Sunniva Park', 'volunteer', 'en', ['prunes_alone']), since: 'today' },
  { ...adult('Abel Ferreira', 'volunteer', 'es', []), since: 'today' },
  adult('Dorothea Nkemelu', 'volunteer', 'en', ['hand_saw', 'ladder']),
  { ...adult('Casimir Wray', 'volunteer', 'en', []), since: 'today' },
  { ...adult('Hob Larrimore', 'volunteer', 'en', ['prunes_alone']), hasPhone: false },
  {
    ...adult('Lucía Quiñones', 'volunteer', 'es', []),
    ageBand: 'minor',
    guardian: 'Rosaura Quiñones',
    hasPhone: false,
  },
  { ...adult('Odalys Renwick', 'volunteer', 'en', ['prunes_alone']), since: 'last_winter_only' },
  { ...adult('Ambrose Tilley', 'visitor', 'en', []), hasPhone: false, since: 'today' },
]

/** Whose links the host prints. The newcomer has just arrived and done nothing else. */
export const demoSeats = {
  manager: 'Maren Oduya',
  lead: 'Wilma Thackeray',
  volunteer: 'Tobin Achterberg',
  newcomer: 'Casimir Wray',
} as const

function adult(
  name: string,
  role: DemoPerson['role'],
  language: DemoPerson['language'],
  skills: DemoPerson['skills']
): DemoPerson {
  return { name, role, ageBand: 'adult', language, skills, hasPhone: true, since: 'last_winter' }
}
