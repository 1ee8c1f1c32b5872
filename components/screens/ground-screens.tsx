/** The screens on which a manager sets up the ground. */

import type { Screen } from './screen-list'

export const groundScreens = {
  ground: {
    gate: 'lead',
    load: async () => {
      const { GroundScreen } = await import('../ground/GroundScreen')
      return ({ query }) => <GroundScreen made={query.get('made')} />
    },
  },
  newBlock: {
    gate: 'lead',
    load: async () => {
      const { NewBlockScreen } = await import('../ground/NewBlockScreen')
      return () => <NewBlockScreen />
    },
  },
  cultivars: {
    gate: 'lead',
    load: async () => {
      const { CultivarsScreen } = await import('../ground/CultivarsScreen')
      return () => <CultivarsScreen />
    },
  },
  block: {
    gate: 'lead',
    load: async () => {
      const { BlockScreen } = await import('../ground/BlockScreen')
      return ({ id }) => <BlockScreen no={Number(id)} />
    },
  },
} satisfies Record<string, Screen>
