/** Volunteers, from the door to the tree and the brush. */

import { routes } from '@/lib/routes'

import { takeSetUpCode } from '../set-up-codes'
import { finish } from './days'
import type { Walk } from './walk'

export const walksOfVolunteers: readonly Walk[] = [
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
      { path: routes.setUp(takeSetUpCode()), press: (words) => words.takeOut.inInstead },
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
      { path: routes.nextTree(), press: (words) => words.nextTree.otherTree },
      { path: routes.nextTree(), press: (words) => words.findTree.changeWhere },
      { path: routes.nextTree(), press: (words) => words.nextTree.claim },
      routes.tree(2),
      routes.treeHistory(2),
      routes.tree(9999),
      routes.flag(),
      routes.flagTree(2),
      routes.openness(2),
      { path: routes.flagTree(2), press: (words) => words.flag.kindDisease },
      { path: routes.flagTree(4), press: (words) => words.flag.kindHazard },
      { path: routes.flagTree(5, 'limb'), press: (words) => words.ours.thickness.not_known },
      routes.breakOrLeave(),
      routes.unsent(),
      routes.device(),
      routes.emergency(),
      routes.callLead(),
      { path: routes.callLead(), press: (words) => words.call.kinds.injury },
      { path: routes.callLead(), press: (words) => words.call.kinds.lost_person },
      { path: routes.callLead(), press: (words) => words.call.kinds.question },
      routes.stopWork(),
    ],
  },
  {
    of: 'a volunteer at a tree',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      const canker = { kind: 'disease', sign: 'canker', severity: 'low' } as const
      await orchard.must('Bo', 'flag_tree', { tree: 3, ...canker })
      await orchard.must('Lee', 'deal_trees', { trees: [3], to: [orchard.idOf('Ann')] })
      await orchard.must('Lee', 'mark_big_cuts', { tree: 3, note: 'Varnholt 3' })
      await orchard.must('Ann', 'claim_tree', { tree: 3 })
      return [
        routes.tree(3),
        { path: routes.tree(3), press: (words) => words.tree.stuck },
        { path: routes.tree(3), press: (words) => words.tree.handOver },
        routes.limbsOfTree(3),
        routes.weighLimb(3),
        routes.finishTree(3),
        routes.halfDoneTree(3),
        routes.flagTree(3),
        routes.cutAtTree(3),
        { path: routes.cutAtTree(3), press: (words) => words.cuts.cut.lateralTitle },
        routes.shortenAtTree(3),
        routes.shortenAtTree(4),
        routes.nextTree(),
        routes.breakOrLeave(),
        routes.emergency(),
        routes.callLead(),
      ]
    },
  },
  {
    of: 'a volunteer whose trees were looked over',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      for (const tree of [1, 2]) await finish(orchard, 'Ann', tree)
      await orchard.must('Lee', 'look_over', { tree: 1, result: 'passed' })
      const stubs = { result: 'reopened', reason: 'stubs_left' } as const
      await orchard.must('Lee', 'look_over', { tree: 2, ...stubs })
      return [routes.nextTree(), routes.haul()]
    },
  },
  {
    of: 'a volunteer who hauls brush',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      for (const tree of [1, 2]) await finish(orchard, 'Ann', tree)
      const canker = { kind: 'disease', sign: 'canker', severity: 'low' } as const
      await orchard.must('Bo', 'flag_tree', { tree: 2, ...canker })
      await orchard.must('Lee', 'direct_brush', { block: 1, rows: [1], goes: 'burn' })
      await orchard.must('Ann', 'take_brush', { block: 1, row: 1 })
      return [
        routes.haul(),
        { path: routes.haul(), press: (words) => words.brush.part },
        routes.nextTree(),
        routes.breakOrLeave(),
      ]
    },
  },
]
