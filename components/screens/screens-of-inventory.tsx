/** The screens by which an orchard's trees come in and go out. */

import type { Screen } from './screen-list'

export const screensOfInventory = {
  bringIn: {
    gate: 'lead',
    load: async () => {
      const { BringInScreen } = await import('../bring-in/BringInScreen')
      return () => <BringInScreen />
    },
  },
  takeOut: {
    gate: 'lead',
    load: async () => {
      const { TakeOutScreen } = await import('../bring-in/TakeOutScreen')
      return () => <TakeOutScreen />
    },
  },
} satisfies Record<string, Screen>
