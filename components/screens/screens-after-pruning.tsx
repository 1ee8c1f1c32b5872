/** The screens for what comes after pruning: hauling brush, and looking over. */

import type { Screen } from './screen-list'

export const screensAfterPruning = {
  haul: {
    gate: 'crew',
    load: async () => {
      const { HaulScreen } = await import('../brush/HaulScreen')
      return () => <HaulScreen />
    },
  },
  brush: {
    gate: 'lead',
    load: async () => {
      const { BrushScreen } = await import('../brush/BrushScreen')
      return () => <BrushScreen />
    },
  },
  lookOver: {
    gate: 'lead',
    load: async () => {
      const { LookOverScreen } = await import('../look-over/LookOverScreen')
      return () => <LookOverScreen />
    },
  },
} satisfies Record<string, Screen>
