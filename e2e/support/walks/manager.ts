/** A manager's board and rooms. */

import { routes } from '@/lib/routes'

import { flagBoth, hazard, tag2 } from './days'
import type { Walk } from './walk'

export const walksOfManagers: readonly Walk[] = [
  {
    of: 'a manager',
    who: 'Mo',
    device: 'desktop',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      await orchard.must('Bo', 'flag_tree', { tree: 20, ...hazard, keepOutM: 4 })
      return [
        routes.board(),
        routes.map(),
        routes.map(20),
        routes.shift(),
        routes.people(),
        routes.houseRules(),
      ]
    },
  },
  {
    of: 'a manager with a hazard to clear',
    who: 'Mo',
    device: 'desktop',
    screens: async (orchard) => {
      const flag = await flagBoth(orchard)
      return [
        routes.flags(),
        { path: routes.flags(), press: (words) => `${words.flags.clear}: ${tag2}` },
        routes.referral(flag),
      ]
    },
  },
]
