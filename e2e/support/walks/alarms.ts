/** When something is wrong: calls, stops, changed briefings, keep-outs. */

import { randomUUID } from 'node:crypto'

import { routes } from '@/lib/routes'

import { changeBriefing, hazard, planNext } from './days'
import type { Walk } from './walk'

export const walksOfAlarms: readonly Walk[] = [
  {
    of: 'a volunteer who called, while somebody is looked for',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      const di = { kind: 'lost_person', subject: orchard.idOf('Di'), tree: 7 } as const
      await orchard.must('Bo', 'call_for_help', di)
      await orchard.must('Ann', 'call_for_help', { kind: 'injury', tree: 3 })
      const { id } = await orchard.call('Ann', { kind: 'question' })
      await orchard.must('Lee', 'answer_call', { call: id })
      return [routes.callLead(), routes.nextTree()]
    },
  },
  {
    of: 'a volunteer at a tree for whom the briefing changed, gravely',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 3 })
      await changeBriefing(orchard, 'come_down')
      return [routes.tree(3), { path: routes.tree(3), press: (words) => words.stop.emergency }]
    },
  },
  {
    of: 'a volunteer who reads what is new',
    who: 'Bo',
    device: 'phone',
    screens: async (orchard) => {
      await changeBriefing(orchard, 'before_next_tree')
      return [
        routes.briefing(),
        { path: routes.briefing(), press: (words) => words.briefing.nextTopic },
      ]
    },
  },
  {
    of: 'a lead whose crew has to come down, with a shift planned',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 3 })
      await planNext(orchard)
      await changeBriefing(orchard, 'come_down')
      return [
        routes.giveBriefing(),
        { path: routes.giveBriefing(), press: (words) => words.proposals.version(1) },
        routes.shift(),
      ]
    },
  },
  {
    of: 'a volunteer during a stop',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await orchard.must('Bo', 'stop_work', {})
      return [
        routes.nextTree(),
        { path: routes.nextTree(), press: (words) => words.stop.iStopped },
        routes.stopWork(),
      ]
    },
  },
  {
    of: 'a lead during a stop',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      const stop = randomUUID()
      await orchard.must('Bo', 'stop_work', { block: null, reason: null }, stop)
      await orchard.must('Lee', 'answer_stop', { stop, answer: 'stopped' })
      return [routes.headCount(), routes.stopWork()]
    },
  },
  {
    of: 'a volunteer inside a keep-out',
    who: 'Ann',
    device: 'phone',
    screens: async (orchard) => {
      await orchard.must('Ann', 'claim_tree', { tree: 1 })
      await orchard.must('Bo', 'flag_tree', { tree: 2, ...hazard, keepOutM: 8 })
      return [
        routes.nextTree(),
        { path: routes.flag(), press: (words) => words.stop.comeOut.iAmOut },
      ]
    },
  },
  {
    of: 'a lead who is called',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      const di = { kind: 'lost_person', subject: orchard.idOf('Di'), tree: 7 } as const
      await orchard.must('Bo', 'call_for_help', di)
      const mine = await orchard.call('Ann', { kind: 'injury', tree: 3, note: '7' })
      await orchard.must('Lee', 'answer_call', { call: mine.id })
      const over = await orchard.call('Ann', { kind: 'tool' })
      await orchard.must('Lee', 'end_call', { call: over.id, outcome: '8' })
      await orchard.must('Lee', 'write_incident', { kind: 'injury', tree: 3, note: '9' })
      return [
        routes.map(),
        routes.calls(),
        routes.calls(mine.id),
        { path: routes.calls(), press: (words) => words.calls.write },
        routes.nextTree(),
      ]
    },
  },
]
