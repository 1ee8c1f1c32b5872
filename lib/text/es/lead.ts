import type { lead as en } from '../en/lead'

import { board } from './board'
import { calls } from './calls'
import { inventory } from './inventory'
import { leadMap } from './lead-map'
import { lookOver } from './look-over'
import { mapTools } from './map-tools'
import { people } from './people'
import { setUp } from './set-up'
import { shift } from './shift'

export const lead: typeof en = {
  leadMap,
  lookOver,
  mapTools,
  shift,
  people,
  board,
  calls,
  inventory,
  setUp,
}
