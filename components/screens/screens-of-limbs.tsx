/** The screens about the limbs of one tree. A part of `screens`. */

import { treeNumber } from '../tree/tree-number'
import type { Screen } from './screen-list'

export const screensOfLimbs = {
  limbsOfTree: {
    gate: 'crew',
    load: async () => {
      const { LimbsScreen } = await import('../limbs/LimbsScreen')
      return ({ id }) => <LimbsScreen no={treeNumber(id)} />
    },
  },
  weighLimb: {
    gate: 'crew',
    load: async () => {
      const { WeighScreen } = await import('../limbs/WeighScreen')
      return ({ id }) => <WeighScreen no={treeNumber(id)} />
    },
  },
} satisfies Record<string, Screen>
