/** Looking over finished trees: for leads. */

import { plural } from './plural'

export const lookOver = {
  title: (count: number) => plural(count, '1 tree to look over', `${count} trees to look over`),
  none: 'Nothing to look over',
  noneNote: 'Every finished tree is passed, or you worked on it yourself.',
  whichNote:
    'One tree of everybody first, the newest person before all; then one in five at random.',
  allSeen: 'Everybody has had a tree looked over',
  allSeenNote: 'The rest is in the list. Open any of them.',
  prunedBy: (names: string, time: string) => `${names}, done ${time}`,
  firstOf: (name: string) => `Nothing of ${name}’s was looked over in this round`,
  drawn: 'Picked at random',
  chosen: 'You chose it',
  before: (found: string) => `Reopened before: ${found}`,
  pass: 'Pass',
  reopen: 'Reopen',
  reopenTitle: (tag: string) => `Reopen ${tag}`,
  reopenNote:
    'It is begun again and goes back to whoever finished it, if they are here. They read why.',
  note: 'What is left to do?',
  noteHint: 'If you like. Whoever comes to the tree reads it.',
  onMap: 'On the map',
  yours: 'You worked on this tree. Another lead looks it over.',
  passed: 'Looked over and passed',
  reopened: (found: string, name: string) => `Reopened by ${name}: ${found}`,
  listOf: 'Done and not looked over, by person',
  proposed: 'proposed',
}
