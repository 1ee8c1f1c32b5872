/** The helpers of the tree in hand for one cut and for a shoot. A part of `screens`. */

import { treeNumber } from '../tree/tree-number'
import type { Screen } from './screen-list'

export const cutScreens = {
  cutAtTree: {
    gate: 'crew',
    load: async () => {
      const { CutScreen } = await import('../cuts/CutScreen')
      return ({ id }) => <CutScreen no={treeNumber(id)} />
    },
  },
  shortenAtTree: {
    gate: 'crew',
    load: async () => {
      const { ShortenScreen } = await import('../cuts/ShortenScreen')
      return ({ id }) => <ShortenScreen no={treeNumber(id)} />
    },
  },
} satisfies Record<string, Screen>
