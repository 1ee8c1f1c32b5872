/** Every screen there is, and what lies over it after one press, with who sees it and how far their day has come. */

import { randomUUID } from 'node:crypto'

import { expect, type Page } from '@playwright/test'

import { routes } from '@/lib/routes'
import { type LeadMessages, leadMessages, type Messages, messages } from '@/lib/text/messages'

import type { DeviceName } from './devices'
import type { Orchard, PersonName } from './orchard'
import { takeSetUpCode } from './set-up-codes'

type Words = Messages & LeadMessages

/** A path; or a path and what is pressed there, in whichever language. */
type Screen = string | { path: string; press: (words: Words) => string }

export type Walk = {
  /** "nobody yet", "a volunteer at a tree". */
  of: string
  /** Null: a browser that nobody is signed in on. */
  who: PersonName | null
  device: DeviceName
  /** Brings the day so far, and says which screens are looked at then. */
  screens: (orchard: Orchard) => Promise<readonly Screen[]> | readonly Screen[]
}

export async function openScreen(page: Page, screen: Screen, language: 'en' | 'es'): Promise<void> {
  const { path, press } = typeof screen === 'string' ? { path: screen, press: null } : screen
  if (isInPage(page.url()) && isInPage(path)) await goInPage(page, path)
  else await load(page, path)
  if (press === null) return
  const words = { ...(await messages(language)), ...(await leadMessages(language)) }
  const name = press(words)
  const button = page.getByRole('button', { name, exact: true })
  // A painted choice is pressed by its words.
  await button
    .or(page.locator('label').filter({ hasText: name }))
    .first()
    .click()
}

const pagesOfServer = [routes.home(), routes.join(), routes.setUp()]

function isInPage(url: string): boolean {
  return !url.startsWith('about:') && !pagesOfServer.includes(new URL(url, 'http://x').pathname)
}

async function load(page: Page, path: string): Promise<void> {
  // A fragment alone would not load the page anew.
  await page.goto('about:blank')
  await page.goto(path)
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
}

/** As people get there, and in a fifth of the time. By way of another screen, so that nothing stays open or chosen. */
async function goInPage(page: Page, path: string): Promise<void> {
  for (const to of [routes.unsent(), path]) {
    await page.evaluate((address) => {
      for (const heading of document.querySelectorAll<HTMLElement>('main h1'))
        heading.dataset.left = ''
      history.pushState(null, '', address)
    }, to)
    const arrived = page.locator('main h1:not([data-left])').first()
    // What lies over every screen has no screen under it.
    const isThere = await arrived.waitFor({ state: 'attached', timeout: 3_000 }).then(
      () => true,
      () => false
    )
    if (!isThere) return load(page, path)
  }
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible()
}

/** Version 2: two topics stay, two come. */
async function changeBriefing(
  orchard: Orchard,
  change: 'before_next_tree' | 'come_down'
): Promise<void> {
  const { id } = await orchard.openShift()
  const own = { code: 'own_1', en: 'Ordwin: Varnholt 3', es: 'Ordwin: Varnholt 3' }
  const topics = [{ code: 'stop_signal' }, { code: 'tools' }, own, { code: 'nests' }]
  await orchard.must('Lee', 'write_briefing', { shift: id, topics, change })
}

async function planNext(orchard: Orchard): Promise<void> {
  const { roundId, date, startsAt, endsAt } = await orchard.openShift()
  const hours = { date, startsAt, endsAt, signal: 'whistle' } as const
  await orchard.must('Lee', 'schedule_shift', { round: roundId, ...hours })
}

async function finish(orchard: Orchard, who: PersonName, tree: number): Promise<void> {
  const claim = randomUUID()
  await orchard.must(who, 'claim_tree', { tree }, claim)
  await orchard.must(who, 'finish_tree', { tree, claim })
}

const hazard = { kind: 'arborist', sign: 'hanging_limb', severity: 'high' } as const
const [tag2, tag4] = ['A 1·2', 'A 1·4']

/** A hazard with somebody inside its keep-out, and a suspected disease; gives the hazard's flag. */
async function flagBoth(orchard: Orchard): Promise<string> {
  const flag = randomUUID()
  await orchard.must('Ann', 'claim_tree', { tree: 1 })
  await orchard.must('Bo', 'flag_tree', { tree: 2, ...hazard, keepOutM: 8, note: '2' }, flag)
  await orchard.must('Bo', 'flag_tree', { tree: 4, kind: 'disease', sign: 'gum', severity: 'low' })
  return flag
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
      { path: routes.nextTree(), press: (words) => words.nextTree.otherTree },
      { path: routes.nextTree(), press: (words) => words.findTree.changeWhere },
      { path: routes.nextTree(), press: (words) => words.nextTree.claim },
      routes.tree(2),
      routes.tree(9999),
      routes.flag(),
      routes.flagTree(2),
      { path: routes.flagTree(2), press: (words) => words.flag.kindDisease },
      { path: routes.flagTree(4), press: (words) => words.flag.kindHazard },
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
        { path: routes.map(), press: (words) => words.mapTools.asTable },
        { path: routes.map(), press: (words) => words.mapTools.draw },
        { path: routes.map(), press: (words) => words.mapTools.filter },
        { path: routes.map(), press: (words) => words.mapTools.find },
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
  {
    of: 'a lead with paper',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      const claim = randomUUID()
      await orchard.must('Ann', 'claim_tree', { tree: 1 }, claim)
      await orchard.must('Ann', 'finish_tree', { tree: 1, claim })
      return [
        routes.paper(),
        routes.fromPaper(),
        { path: routes.fromPaper(), press: (words) => words.fromPaper.add },
        { path: routes.shift(), press: (words) => words.record.show },
      ]
    },
  },
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
      ]
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
    of: 'a lead with flags to look at',
    who: 'Lee',
    device: 'tablet',
    screens: async (orchard) => {
      await flagBoth(orchard)
      return [
        routes.flags(),
        { path: routes.flags(), press: (words) => `${words.flags.confirm}: ${tag4}` },
        { path: routes.flags(), press: (words) => `${words.flags.withdraw}: ${tag4}` },
        { path: routes.flags(), press: (words) => `${words.flags.changeKeepOut}: ${tag2}` },
        { path: routes.flags(), press: (words) => `${words.flags.write}: ${tag2}` },
        routes.houseRules(),
      ]
    },
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
