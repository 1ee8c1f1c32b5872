/** Every screen there is, with who sees it and how far their day has come. */

import { routes } from '@/lib/routes'

import type { DeviceName } from './devices'
import type { Orchard, PersonName } from './orchard'
import { takeSetUpCode } from './set-up-codes'

export type Walk = {
  /** "nobody yet", "a volunteer at a tree". */
  of: string
  /** Null: a browser that nobody is signed in on. */
  who: PersonName | null
  device: DeviceName
  /** Brings the day so far, and says which screens are looked at then. */
  screens: (orchard: Orchard) => Promise<string[]> | string[]
}

export const walks: readonly Walk[] = [
  {
    of: 'nobody yet',
    who: null,
    device: 'phone',
    screens: async (orchard) => [
      routes.home(),
      routes.join(),
      routes.join('no-such-code'),
      await orchard.link('Lee', { kind: 'join' }),
      await orchard.link('Mo', { kind: 'role', role: 'lead' }),
      await orchard.link('Ann', { kind: 'device' }),
      routes.setUp(),
      routes.setUp(takeSetUpCode()),
    ],
  },
  {
    of: 'a volunteer who lacks everything',
    who: 'Cy',
    device: 'phone',
    screens: () => [
      routes.ready(),
      routes.consent(),
      routes.briefing(),
      routes.tools(),
      routes.nextTree(),
      routes.breakOrLeave(),
      routes.stopWork(),
    ],
  },
  {
    of: 'a volunteer between two trees',
    who: 'Ann',
    device: 'phone',
    screens: () => [
      routes.ready(),
      routes.consent(),
      routes.briefing(),
      routes.tools(),
      routes.nextTree(),
      routes.tree(2),
      routes.tree(9999),
      routes.flag(),
      routes.flagTree(2),
      routes.breakOrLeave(),
      routes.unsent(),
      routes.device(),
      routes.emergency(),
      routes.callLead(),
      routes.stopWork(),
    ],
  },
  {
    of: 'a volunteer at a tree',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await orchard.must('Bo', 'flag_tree', {
        tree: 3,
        kind: 'disease',
        sign: 'canker',
        severity: 'low',
      })
      await orchard.must('Lee', 'deal_trees', { trees: [3], to: [orchard.idOf('Ann')] })
      await orchard.must('Ann', 'claim_tree', { tree: 3 })
      return [
        routes.tree(3),
        routes.finishTree(3),
        routes.halfDoneTree(3),
        routes.flagTree(3),
        routes.nextTree(),
        routes.breakOrLeave(),
        routes.emergency(),
        routes.callLead(),
      ]
    },
  },
  {
    of: 'a volunteer during a stop',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await orchard.must('Bo', 'stop_work', {})
      return [routes.nextTree()]
    },
  },
  {
    of: 'a lead',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      await orchard.must('Lee', 'deal_trees', { trees: [5, 6], to: [orchard.idOf('Bo')] })
      return [
        routes.map(),
        routes.shift(),
        routes.giveBriefing(),
        routes.people(),
        routes.person(orchard.idOf('Ann')),
      ]
    },
  },
  {
    of: 'a manager',
    who: 'Mo',
    device: 'desktop',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      const hazard = { kind: 'arborist', sign: 'hanging_limb', severity: 'high' } as const
      await orchard.must('Bo', 'flag_tree', { tree: 20, ...hazard, keepOutM: 4 })
      return [routes.board(), routes.map(), routes.shift(), routes.people()]
    },
  },
]
