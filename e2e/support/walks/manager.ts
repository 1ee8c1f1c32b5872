/** A manager's board and rooms. */

import { routes } from '@/lib/routes'

import { finish, flagBoth, hazard, planNext, tag2 } from './days'
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
        routes.bringIn(),
        routes.takeOut(),
      ]
    },
  },
  {
    of: 'a manager in the rooms',
    who: 'Mo',
    device: 'desktop',
    screens: async (orchard) => {
      await finish(orchard, 'Ann', 1)
      const reopened = { result: 'reopened', reason: 'stubs_left' } as const
      await orchard.must('Lee', 'look_over', { tree: 1, ...reopened })
      await planNext(orchard)
      await orchard.link('Mo', { kind: 'role', role: 'lead' })
      await orchard.must('Mo', 'remove_person', { subject: orchard.idOf('Cy') })
      const { id: shift } = await orchard.openShift()
      return [
        routes.rooms(),
        routes.invites(),
        {
          path: routes.invites(),
          press: ({ invites, things }) => invites.endOf(invites.kinds.role(things.role.lead)),
        },
        routes.rounds(),
        { path: routes.rounds(), press: (words) => words.rounds.another },
        { path: routes.rounds(), press: (words) => words.shift.closeRound },
        routes.shifts(),
        routes.shiftRecord(shift),
        routes.hours(),
        routes.season(),
        { path: routes.season(), press: (words) => words.season.paste },
        routes.settings(),
        routes.aerial(),
        routes.left(),
        routes.forget(orchard.idOf('Cy')),
        routes.forget(orchard.idOf('Ann')),
        routes.audit(),
        routes.audit({ tree: 1 }),
        routes.treeHistory(1),
        { path: routes.map(1), press: (words) => words.history.show },
      ]
    },
  },
  {
    of: 'a manager who sets up the ground',
    who: 'Mo',
    device: 'tablet',
    screens: () => [
      routes.ground(),
      routes.newBlock(),
      routes.cultivars(),
      { path: routes.cultivars(), press: (words) => words.ground.newCultivar },
      routes.block(1),
      { path: routes.block(1), press: (words) => words.ground.pickAll },
      { path: routes.block(1), press: (words) => words.ground.pickRange },
      { path: routes.block(1), press: (words) => words.ground.addTree },
      { path: routes.block(1), press: (words) => words.ground.renumber },
      { path: routes.block(1), press: (words) => words.ground.changeBlock },
    ],
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
