/** What a lead picks from, the gravest first. */

import type { Incident } from '@/lib/hooks'

export const incidentKinds: readonly Incident['kind'][] = [
  'injury',
  'near_miss',
  'ladder',
  'tool',
  'power_line',
  'lost_person',
  'damage',
  'other',
]
