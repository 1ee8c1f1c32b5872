/** A lead's map, people, paper and flags. */

import { randomUUID } from 'node:crypto'

import { routes } from '@/lib/routes'

import { finish, flagBoth, tag2, tag4 } from './days'
import type { Walk } from './walk'

export const walksOfLeads: readonly Walk[] = [
  {
    of: 'a lead at the map',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      await orchard.must('Lee', 'deal_trees', { trees: [5, 6], to: [orchard.idOf('Bo')] })
      await orchard.must('Lee', 'mark_big_cuts', { tree: 5, note: 'Varnholt 5' })
      return [
        routes.map(),
        routes.map(1),
        { path: routes.map(1), press: (words) => words.people.handOn },
        routes.map(5),
        { path: routes.map(7), press: (words) => words.leadMap.mark },
        { path: routes.map(7), press: (words) => words.ground.leaveOut },
        { path: routes.map(), press: (words) => words.mapTools.asTable },
        { path: routes.map(), press: (words) => words.mapTools.draw },
        { path: routes.map(), press: (words) => words.mapTools.filter },
        { path: routes.map(), press: (words) => words.mapTools.find },
        { path: routes.map(), press: (words) => words.where.title },
        { path: routes.map(), press: (words) => words.leadMap.pick },
        // What is picked stays picked, so it comes last.
        { path: routes.map(5), press: (words) => words.leadMap.pickTree },
      ]
    },
  },
  {
    of: 'a lead',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      await finish(orchard, 'Bo', 8)
      return [
        routes.map(8),
        routes.lookOver(),
        routes.weighLimb(8),
        routes.shortenAtTree(26),
        { path: routes.shortenAtTree(4), press: (words) => words.cuts.shorten.profiles.counted },
        routes.brush(),
        { path: routes.lookOver(), press: (words) => words.lookOver.reopen },
        routes.shift(),
        { path: routes.shift(), press: (words) => words.shift.changeBriefing },
        { path: routes.shift(), press: (words) => words.shift.planAnother },
        { path: routes.shift(), press: (words) => words.shift.makeLink },
        { path: routes.shift(), press: (words) => words.shift.close },
        routes.giveBriefing(),
        routes.people(),
        routes.headCount(),
        { path: routes.headCount(), press: (words) => words.count.countNow },
        routes.cameIn(),
        { path: routes.people(), press: (words) => words.people.add },
        routes.person(orchard.idOf('Ann')),
        { path: routes.person(orchard.idOf('Ann')), press: (words) => words.people.remove },
        { path: routes.person(orchard.idOf('Ann')), press: (words) => words.people.edit('Ann') },
        { path: routes.person(orchard.idOf('Ann')), press: (words) => words.people.handOn },
      ]
    },
  },
  {
    of: 'a lead with paper and a plan',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      const claim = randomUUID()
      await orchard.must('Ann', 'claim_tree', { tree: 1 }, claim)
      await orchard.must('Ann', 'finish_tree', { tree: 1, claim })
      return [
        routes.paper(),
        routes.plan(),
        { path: routes.plan(), press: (words) => words.plan.rules },
        routes.fromPaper(),
        routes.labels(),
        routes.poster((await orchard.openShift()).id),
        { path: routes.fromPaper(), press: (words) => words.fromPaper.add },
        { path: routes.shift(), press: (words) => words.record.show },
      ]
    },
  },
  {
    of: 'a lead with flags to look at',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await flagBoth(orchard)
      return [
        routes.flags(),
        routes.disease(),
        { path: routes.disease(), press: (words) => words.disease.showFigures },
        { path: routes.map(), press: (words) => words.disease.onMap },
        { path: routes.flags(), press: (words) => `${words.flags.confirm}: ${tag4}` },
        { path: routes.flags(), press: (words) => `${words.flags.withdraw}: ${tag4}` },
        { path: routes.flags(), press: (words) => `${words.flags.changeKeepOut}: ${tag2}` },
        { path: routes.flags(), press: (words) => `${words.flags.write}: ${tag2}` },
        routes.houseRules(),
      ]
    },
  },
]
