/** The lead's live map: who holds what, and dealing trees. */

import { plural } from './plural'

export const leadMap = {
  title: 'Map',
  tabs: { map: 'Map', shift: 'Shift', people: 'People', board: 'The day so far' },
  openSince: (time: string, people: string) => `open since ${time}, ${people}`,
  notOpen: 'not open yet',
  crew: 'Crew',
  crewCounts: (atTree: number, free: number, onBreak: number) =>
    `${atTree} at a tree, ${free} free, ${onBreak} on a break`,
  free: 'Free',
  onBreak: 'Break',
  notReady: 'not ready',
  minutesAt: (duration: string) => `${duration} at it`,
  lastHeard: (duration: string) => `last heard ${duration} ago`,
  callsForHelp: 'Calls for help',
  coming: 'I am coming',
  treesByRow: 'Trees by row',
  asMap: 'As a map',
  asList: 'As a list',
  blockAndRow: (block: string, row: number) => `${block}, row ${row}`,

  pick: 'Pick trees to deal',
  pickRow: (row: number) => `Pick the whole of row ${row}`,
  picked: (count: number) => plural(count, '1 tree picked', `${count} trees picked`),
  drop: 'Drop the selection',
  toWhom: 'Deal to whom?',
  deal: (count: number, name: string) => `Deal ${count} to ${name}`,
  dealing: 'Asking…',
  dealt: (count: number, name: string) =>
    plural(count, `1 tree is dealt to ${name}.`, `${count} trees are dealt to ${name}.`),
  choosePerson: 'Choose who gets them.',
  chooseTrees: 'Pick trees on the map or in the list.',
  takeBack: 'Take back',
  dealtTo: (name: string) => `dealt to ${name}`,
  heldBy: (name: string) => `held by ${name}`,
  endClaim: 'End this claim',
  howReached: (name: string) => `How did you reach ${name}?`,
  spoke: 'Spoke in person',
  phoned: 'By phone or radio',
  notReached: 'Not reached',
  handOn: 'Hand it on to',
  powerLine: 'power line',
  stop: 'Stop work',
}
