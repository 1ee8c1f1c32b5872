import type { work as en } from '../en/work'

import { breakLeave } from './break-leave'
import { briefing } from './briefing'
import { brush } from './brush'
import { call } from './call'
import { claim } from './claim'
import { conditions } from './conditions'
import { cuts } from './cuts'
import { device } from './device'
import { findTree } from './find-tree'
import { flag } from './flag'
import { history, myHours } from './history'
import { limbs } from './limbs'
import { lookedOver } from './looked-over'
import { nextTree } from './next-tree'
import { openness } from './openness'
import { ours } from './ours'
import { refusals } from './refusals'
import { sanitation } from './sanitation'
import { species } from './species'
import { tools } from './tools'
import { topics } from './topics'
import { tradeSources } from './trade-sources'
import { tree } from './tree'
import { unsent } from './unsent'
import { weigh } from './weigh'
import { whatToCut } from './what-to-cut'
import { where } from './where'

export const work: typeof en = {
  species,
  briefing,
  topics,
  tools,
  call,
  brush,
  claim,
  cuts,
  sanitation,
  conditions,
  findTree,
  nextTree,
  openness,
  history,
  myHours,
  lookedOver,
  tradeSources,
  tree,
  flag,
  ours,
  limbs,
  weigh,
  breakLeave,
  device,
  unsent,
  whatToCut,
  where,
  refusals,
}
