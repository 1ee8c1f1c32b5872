import type { crew as en } from '../en/crew'

import { breakLeave } from './break-leave'
import { briefing } from './briefing'
import { common } from './common'
import { consent } from './consent'
import { errors } from './errors'
import { flag } from './flag'
import { join } from './join'
import { nextTree } from './next-tree'
import { ready } from './ready'
import { refusals } from './refusals'
import { species } from './species'
import { things } from './things'
import { tools } from './tools'
import { tree } from './tree'
import { unsent } from './unsent'

export const crew: typeof en = {
  common,
  things,
  species,
  join,
  consent,
  ready,
  briefing,
  tools,
  nextTree,
  tree,
  flag,
  breakLeave,
  unsent,
  refusals,
  errors,
}
