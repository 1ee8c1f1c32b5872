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
} satisfies Record<string, Screen>
