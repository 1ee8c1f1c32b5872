/** A proposal for who prunes what, looked at by a lead and dealt in one go. */

import { plural } from './plural'

export const plan = {
  link: 'Plan who takes which trees',
  title: (trees: number, teams: number) =>
    trees === 0
      ? 'There is nothing to deal'
      : `${plural(trees, '1 tree', `${trees} trees`)} for ${plural(teams, 'one team', `${teams} teams`)}`,
  lead: 'A proposal: look at it, change what you know better, then deal it. Nothing is dealt before.',
  noShift: 'A plan is made for an open shift. Open it first.',
  toShift: 'To the shift',
  choices: 'For whom, where and until when',
  until: 'Until',
  earlier: 'Half an hour earlier',
  later: 'Half an hour later',
  people: 'Who takes part',
  blocks: 'Where',
  teams: 'The teams',
  noTeams: 'Nobody who could prune is here.',
  hours: (each: string) => `about ${each} of work`,
  teamTrees: (count: number) => plural(count, '1 tree', `${count} trees`),
  noTrees: 'No tree is left for them.',
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  pictureOf: (block: string) => `${block}, seen from above, with each team’s way by number`,
  left: 'What is left',
  leftWhy: {
    hours: (count: number) =>
      plural(count, '1 tree: not enough hours', `${count} trees: not enough hours`),
    skills: (count: number) =>
      plural(
        count,
        '1 tree: it asks for a saw, a ladder or marked cuts, and no team has the skill, the tool in hand and two people',
        `${count} trees: they ask for a saw, a ladder or marked cuts, and no team has the skill, the tool in hand and two people`
      ),
    beside_overhead: (count: number) =>
      plural(
        count,
        '1 tree: beside somebody else’s saw or ladder. Deal it when they are done',
        `${count} trees: beside somebody else’s saw or ladder. Deal them when they are done`
      ),
    closed: (count: number) => plural(count, '1 tree: closed', `${count} trees: closed`),
    off: (count: number) => plural(count, '1 tree: off today', `${count} trees: off today`),
    dealt: (count: number) =>
      plural(
        count,
        '1 tree: kept for somebody already',
        `${count} trees: kept for somebody already`
      ),
  },
  withoutAdult: (names: string) => `Their own adult is not free to go with them: ${names}.`,
  rules: 'How it is made',
  rule: {
    skills:
      'Saw and ladder trees go to two people of whom one has the skill and the tool, and never with a minor.',
    beside: 'What stands beside a saw or ladder tree goes to the same team, or is left.',
    newcomers: 'Newcomers go with somebody who prunes alone, minors with their own adult.',
    order:
      'Healthy trees come before sick ones, in the order of the walk, up one row and down the next.',
  },
  minutes: (finished: number) =>
    plural(
      finished,
      'Minutes per tree: from 1 finished tree and published figures.',
      `Minutes per tree: from ${finished} finished trees and published figures.`
    ),
  deal: (trees: number) => plural(trees, 'Deal this tree', `Deal these ${trees} trees`),
  dealNone: 'Deal trees',
  chooseTeam: 'Tick a team that gets its trees.',
  dealing: (at: number, all: number) => `Dealing to team ${at} of ${all}…`,
  dealt: (trees: number, teams: number) =>
    `${plural(trees, '1 tree is', `${trees} trees are`)} dealt to ${plural(teams, 'one team', `${teams} teams`)}.`,
  notDealt: (names: string) =>
    `Not dealt, since something changed meanwhile: ${names}. The plan is made anew.`,
  noAnswer: (names: string) => `No answer for ${names}: try again where there is signal.`,
  openMap: 'Look at it on the map',
}
